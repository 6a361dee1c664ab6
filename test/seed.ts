/**
 * Property tests draw from one seed, so that a red run can be run again: `PROPERTY_SEED=7 npx vitest run …` looks
 * elsewhere.
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? 20270912) });
