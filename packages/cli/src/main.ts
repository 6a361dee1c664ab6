import { Command } from 'commander';
import { addStoreCommands } from './store/commands.ts';

/**
 * Runs one command line. Each command is loaded when it is asked for, so that starting stays fast.
 * @returns the exit status
 */
export async function main(argv: readonly string[]): Promise<number> {
  let status = 0;
  // Whoever reads along may have seen enough, as `head` has: that is no fault.
  process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
    if (fault.code !== 'EPIPE') throw fault;
    process.exit(0);
  });
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
      'the two days of a cook: plan FILE [--json] [--units us|metric] [--sheet OUT.html] [--ics OUT.ics] [--why PIECE]',
    )
    .helpOption(false)
    .allowUnknownOption()
    .passThroughOptions()
    .action(async (words: string[]) => {
      const { runPlan } = await import('./plan/command.ts');
      status = await runPlan(words, streams);
    });

  program
    .command('which-rack [file]')
    .description('which rack of ribs this is, by what you see, and what another label would change')
    .option('--bones <count>', 'bones counted')
    .option('--bone-length <length>', 'longest bone, such as 110 mm')
    .option('--curve <word>', 'curved, slight or flat')
    .option('--edge <word>', 'rounded, squared or flap')
    .option('--mass <mass>', 'such as 1.2 kg')
    .option('--length <length>', 'along the row of bones')
    .option('--label <cut>', 'what the shop calls it')
    .option('--piece <letter>', 'the piece of the cook file')
    .option('--units <units>', 'us or metric')
    .action(async (path: string | undefined, options: object) => {
      const { runWhichRack } = await import('./which-rack/command.ts');
      status = await runWhichRack(path, options, streams);
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
