import fc from 'fast-check';

/** The same examples on every run; FC_SEED=... tries others. */
fc.configureGlobal({ seed: Number(process.env.FC_SEED ?? 20_260_711) });
