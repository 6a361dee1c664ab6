export const INSTALL_COMMAND: string;
export function findChromium(environment?: Readonly<Record<string, string | undefined>>): string | undefined;
