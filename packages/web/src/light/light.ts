/**
 * The light the sheet is drawn for. A device's own matter, so it lives beside the entries, not among them:
 * the phone at the pit may stand in the sun while the laptop does not.
 */
export const LIGHTS = ['by-clock', 'paper', 'lamp', 'sun'] as const;
export type Light = (typeof LIGHTS)[number];
export type ShownLight = Exclude<Light, 'by-clock'>;

const CHOSEN = 'pitwright.light';
/** What stood last, read before the first paint. */
const SHOWN = 'pitwright.light.shown';

let chosen: Light = 'by-clock';
let isDark: () => boolean = darkByHour;
const listeners = new Set<() => void>();

/** Without a place: dark from eight to six. */
function darkByHour(): boolean {
  const hour = new Date().getHours();
  return hour >= 20 || hour < 6;
}

function read(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function write(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch {
    // A device that keeps nothing still shows the right light until it is closed.
  }
}

export const chosenLight = (): Light => chosen;
export const shownLight = (): ShownLight => (chosen === 'by-clock' ? (isDark() ? 'lamp' : 'paper') : chosen);

export function onLight(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function show(): void {
  const light = shownLight();
  const root = document.documentElement;
  if (root.dataset.theme !== light) {
    root.dataset.theme = light;
    write(SHOWN, light);
    const paper = getComputedStyle(root).getPropertyValue('--paper').trim();
    document.querySelector('meta[name="theme-color"]')?.setAttribute('content', paper);
  }
  for (const listener of listeners) listener();
}

export function chooseLight(light: Light): void {
  chosen = light;
  write(CHOSEN, light);
  show();
}

/** Lets the open cook's place say when it is dark there. Given nothing, the clock of the device decides. */
export function followSun(dark: (() => boolean) | undefined): void {
  isDark = dark ?? darkByHour;
  show();
}

export function startLight(): void {
  const kept = read(CHOSEN);
  chosen = LIGHTS.find((light) => light === kept) ?? 'by-clock';
  show();
  setInterval(show, 60_000);
}
