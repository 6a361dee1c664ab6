export const ROOT: string;
export const WEB_DIR: string;
export function requireNode(version?: string): void;
export function ensureInstalled(): void;
export function ensureBuilt(): void;
