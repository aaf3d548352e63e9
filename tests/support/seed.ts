import fc from 'fast-check';

/** Property tests draw the same cases in every run, so that a run can be repeated; FLITCHBOOK_SEED=random looks elsewhere. */
const said = process.env.FLITCHBOOK_SEED ?? '20261125';
fc.configureGlobal({ seed: said === 'random' ? Math.floor(Math.random() * 2 ** 31) : Number(said) });
