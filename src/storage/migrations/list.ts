import { numbered } from '../migrate.ts';
import { first } from './001-first.ts';

export const migrations = numbered([first]);
