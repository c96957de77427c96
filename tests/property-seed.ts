import fc from 'fast-check';

/** Properties are tried on new random cases at every run, but for the gate, which has to give the same answer to the same code. */
if (process.env['CI'] === 'true') fc.configureGlobal({ seed: 20261125 });
