import { NotOnThePhone } from '#app/platform/beside.ts';
import { dimension } from './dimensions.ts';

export interface CuttingProblem {
  /** Field it is about. */
  field: 'rollWidth' | 'tubes' | 'all';
  says: string;
}

interface Asked {
  rollWidth: number;
  mask: number;
  selvage: number;
}

/** One sentence for a layout that cannot be: what is wrong, and what would be right. */
export function cuttingProblem(error: Error, { rollWidth, mask, selvage }: Asked): CuttingProblem {
  if (error instanceof NotOnThePhone) {
    return {
      field: 'all',
      says: 'What lays pieces out is not on the phone yet: with a network, come back to this screen.',
    };
  }
  const { message } = error;
  if (/count/.test(message)) {
    return { field: 'tubes', says: 'That is more than 500 pieces at once: lay out fewer tubes.' };
  }
  if (!/rollWidth/.test(message)) {
    return { field: 'all', says: 'These pieces could not be laid out: check the figures and the plan.' };
  }
  const taken = 2 * (mask + selvage);
  return {
    field: 'rollWidth',
    says: `Masking and selvages take ${dimension(taken)} of a roll of ${dimension(rollWidth)}: a wider roll or less masking leaves cloth to cut.`,
  };
}
