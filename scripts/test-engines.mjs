// The job in every browser engine: npm run test:engines
import { runStages } from './run-stages.mjs';
import { engines } from './stages.mjs';

await runStages([engines]);
