// Every check there is.
import { runStages } from './run-stages.mjs';
import { ALL } from './stages.mjs';

await runStages(ALL);
