import { useSyncExternalStore } from 'react';
import { chosenLight, type Light, onLight, type ShownLight, shownLight } from './light.ts';

export const useChosenLight = (): Light => useSyncExternalStore(onLight, chosenLight);
export const useShownLight = (): ShownLight => useSyncExternalStore(onLight, shownLight);
