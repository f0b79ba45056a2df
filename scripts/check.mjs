// The quick checks, before each commit.
import { runStages } from './run-stages.mjs';
import { QUICK } from './stages.mjs';

await runStages(QUICK);
