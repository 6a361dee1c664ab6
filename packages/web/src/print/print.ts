import { sheetHtml } from '@pitwright/paper';
import { METRIC, type PrintSettings, webMessages } from '@pitwright/words';
import { Foreteller } from '../foresee/foreteller.ts';
import { FULL_MEMBERS } from '../foresee/pursuit.ts';
import { openKeeping } from '../keeping.ts';
import { writingOf } from '../settings.ts';
import { adopt } from './adopt.ts';
import 'virtual:paper.css';
import '../styles/fonts.css';
import './print.css';

const text = (
  id: 'web.print.now' | 'web.print.back' | 'web.print.waiting' | 'web.gone' | 'web.cook.no-forecast',
): string => webMessages[id]();

function say(words: string): void {
  const line = document.createElement('p');
  line.className = 'print-note';
  line.textContent = words;
  document.getElementById('sheets')!.replaceChildren(line);
}

function showKeys(id: string): void {
  const back = document.createElement('a');
  back.href = `/cook/${id}`;
  back.textContent = text('web.print.back');
  const now = document.createElement('button');
  now.type = 'button';
  now.textContent = text('web.print.now');
  now.addEventListener('click', () => window.print());
  document.getElementById('keys')!.append(back, now);
}

/** The fridge sheet and the pit sheet of one cook, as they come out of the printer. */
async function show(): Promise<void> {
  const id = new URLSearchParams(location.search).get('cook') ?? '';
  const journal = await openKeeping();
  const kept = journal.state.cooks.get(id);
  if (!kept || kept.isRemoved) {
    say(text('web.gone'));
    return;
  }
  showKeys(id);
  say(text('web.print.waiting'));
  const settings: PrintSettings = {
    ...METRIC,
    ...writingOf(journal.state, journal.store.device),
    zone: kept.document.zone,
  };
  const foreteller = new Foreteller();
  try {
    const seen = await foreteller.foresee(kept.document, FULL_MEMBERS);
    const foresight = seen && (await foreteller.whole(kept.document, seen.forecast));
    if (!foresight) return;
    adopt(sheetHtml(foresight, settings), document.getElementById('sheets')!);
    document.title = kept.document.name;
    document.documentElement.dataset.ready = 'yes';
  } catch (fault) {
    console.error(fault);
    say(text('web.cook.no-forecast'));
  } finally {
    foreteller.close();
  }
}

await show();
