/** Where a Chromium for the browser tests is, and how to get one. Node's own modules only: runs before `npm ci`. */
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

export const INSTALL_COMMAND = 'apt-get update && apt-get install -y --no-install-recommends chromium';

/** Path of an executable Chromium: `CHROMIUM_PATH`, else the first found on the path; undefined where there is none. */
export function findChromium(environment = process.env) {
  const folders = (environment.PATH ?? '').split(delimiter).concat('/usr/bin');
  const places = [
    environment.CHROMIUM_PATH,
    ...NAMES.flatMap((name) => folders.map((folder) => join(folder, name))),
  ];
  return places.find((place) => place && isExecutable(place));
}

function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
