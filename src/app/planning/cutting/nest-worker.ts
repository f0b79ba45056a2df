import { answerBeside } from '#app/platform/beside.ts';
import { nestPieces } from '#calc';

answerBeside(nestPieces);
