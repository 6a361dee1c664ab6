import { useSyncExternalStore } from 'react';
import { chosenLight, type Light, onLight } from './light.ts';

export const useChosenLight = (): Light => useSyncExternalStore(onLight, chosenLight);
