import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { startLight } from './light/light.ts';
import { keepOfflineCopy } from './offline.ts';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/parts.css';
import './styles/charts.css';

startLight();
createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
keepOfflineCopy();
