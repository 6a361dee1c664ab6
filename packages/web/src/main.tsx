import { httpPeer, startSync } from '@pitwright/store';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { openKeeping } from './keeping.ts';
import { startLight } from './light/light.ts';
import { keepOfflineCopy } from './offline.ts';
import { tellSyncState } from './sync-state.ts';
import { Unkept } from './unkept.tsx';
import 'virtual:sheet.css';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/parts.css';
import './styles/charts.css';

startLight();
const root = createRoot(document.getElementById('root')!);
try {
  const journal = await openKeeping();
  // An empty shelf gets the demo; the page does not wait for it.
  if (journal.history.entries.size === 0)
    void import('./first-run.ts').then(({ shelveDemo }) => shelveDemo(journal));
  // Without a server it all goes on here; with one, other hands see the same.
  startSync(journal.store, httpPeer(location.origin), tellSyncState);
  root.render(
    <StrictMode>
      <App journal={journal} />
    </StrictMode>,
  );
} catch (fault) {
  console.error(fault);
  root.render(<Unkept fault={fault} />);
}
keepOfflineCopy();
