import { Command } from 'commander';
import { addStoreCommands } from './store/commands.ts';

/**
 * Runs one command line. Each command is loaded when it is asked for, so that starting stays fast.
 * @returns the exit status
 */
export async function main(argv: readonly string[]): Promise<number> {
  let status = 0;
  const streams = {
    out: (text: string) => void process.stdout.write(text),
    err: (text: string) => void process.stderr.write(text),
  };
  const program = new Command('pitwright')
    .description('Plans, foresees and writes up a day of cooking over wood, backwards from the table.')
    .enablePositionalOptions()
    .exitOverride();

  program
    .command('calc [words...]')
    .description(
      'one figure by name, or a batch of them: calc NAME --key value, calc --batch FILE.csv, calc --list',
    )
    .helpOption(false)
    .allowUnknownOption()
    .passThroughOptions()
    .action(async (words: string[]) => {
      const { runCalc } = await import('./calc/command.ts');
      status = await runCalc(words, streams);
    });

  program
    .command('plan [words...]')
    .description(
      'the two days of a cook: plan FILE [--json] [--units us|metric] [--sheet OUT.html] [--why PIECE]',
    )
    .helpOption(false)
    .allowUnknownOption()
    .passThroughOptions()
    .action(async (words: string[]) => {
      const { runPlan } = await import('./plan/command.ts');
      status = await runPlan(words, streams);
    });

  addStoreCommands(program, streams, (ended) => {
    status = ended;
  });

  try {
    await program.parseAsync(argv as string[], { from: 'user' });
  } catch (error) {
    // Commander has printed its own sentence; help and version are no failure.
    const { exitCode } = error as { exitCode?: number };
    if (typeof exitCode !== 'number') throw error;
    return exitCode;
  }
  return status;
}
