import type { Command } from 'commander';
import type { Streams } from '../calc/command.ts';

/** Adds the commands that have to do with what is kept. `end` takes the exit status. */
export function addStoreCommands(program: Command, streams: Streams, end: (status: number) => void): void {
  const DATA = ['--data <folder>', 'folder in which everything is kept'] as const;

  program
    .command('serve')
    .description('serves the app and keeps what devices send, on this machine alone')
    .option('--port <number>', 'port to listen on', process.env.PORT)
    .option(...DATA)
    .option('--host <name...>', 'name under which a proxy on this machine passes requests on')
    .action(async (options: { port?: string; data?: string; host?: string[] }) => {
      const { serve } = await import('./serve.ts');
      end((await serve(options)) === undefined ? 1 : 0);
    });

  program
    .command('replay <entries>')
    .description('what a file of entries, one JSON object a line, amounts to')
    .option('--json', 'the whole state as JSON')
    .option('--until <instant>', 'leave out what was written later, as 2027-09-12T11:00:00Z')
    .action(async (path: string, options: { json?: boolean; until?: string }) => {
      const { replay } = await import('./replay.ts');
      end(await replay(path, options, streams));
    });

  program
    .command('backup')
    .description('writes a copy of everything that is kept: a database, and the entries one a line')
    .option(...DATA)
    .option('--to <folder>', 'where to write it; backups/ in the data folder unless told')
    .action(async (options: { data?: string; to?: string }) => {
      const { backup } = await import('./backup.ts');
      end(await backup(options, streams));
    });
}
