import type { ChecklistStage, Step } from '#shared/record/checklist.ts';
import { step } from './starter-step.ts';

/** `limit` says what the release bears, where it is the first thing to give way. */
export function cure(limit?: string): ChecklistStage {
  return {
    stage: 'cure',
    steps: [
      step('cure-in', 'In the oven, turning, sensor on part', {
        role: 'oven',
        hint: `Before gel: tape squeezes only while resin flows.${limit ? ` ${limit}` : ''}`,
      }),
      step('cure-samples-in', 'Cup samples in beside the tube'),
      step('cure-gelled', 'Gelled at a tape edge, turning stopped', {
        role: 'rotationOff',
        hint: 'Prick a bead at a tape edge with a toothpick.',
      }),
      step('cure-held', 'Hold done by the coldest part sensor', {
        role: 'oven',
        hint: 'Air gets there first; the mandrel follows minutes later.',
      }),
      step('cure-hard', 'Every cup sample hard', {
        role: 'samples',
        hint: 'Fingernail leaves nothing. One that stays soft says which cup was off.',
      }),
    ],
  };
}

export function demold(last: readonly Step[]): ChecklistStage {
  return {
    stage: 'demold',
    steps: [
      step('demold-cool', 'Cooled until hand warm'),
      step('demold-tape', 'Tape stripped from its tail end', {
        hint: 'Never slit toward the wall. Eye protection: cured beads are sharp and fly.',
      }),
      step('demold-pulled', 'Twisted loose, then pulled straight', {
        hint: 'Twist first, pull second, against a stop.',
      }),
      ...last,
    ],
  };
}

export function weigh(last: readonly Step[] = []): ChecklistStage {
  return {
    stage: 'weigh',
    steps: [
      step('weigh-tube', 'Tube weighed dry, before end trim', {
        role: 'weighCured',
        hint: 'Or tube and offcuts together: cloth that is gone would count as resin.',
      }),
      ...last,
    ],
  };
}

export function trim(): ChecklistStage {
  return {
    stage: 'trim',
    steps: [
      step('trim-cut', 'Ends masked and cut square', {
        hint: 'Never while soft. Mask and extraction: carbon dust conducts and harms lungs.',
      }),
      step('trim-sealed', 'Cut ends smoothed and sealed'),
    ],
  };
}

export function measure(): ChecklistStage {
  return {
    stage: 'measure',
    steps: [
      step('measure-stations', 'Measured round at every station', { role: 'measure' }),
      step('measure-tapped', 'Looked over, tapped for dry spots'),
      step('measure-judged', 'Judged: good, rework or scrap', { role: 'judge' }),
    ],
  };
}

export function postcure(): ChecklistStage {
  return {
    stage: 'postcure',
    steps: [
      step('post-straight', 'Lies straight, held all along'),
      step('post-up', 'Up slowly: 10 to 20 °C (18 to 36 °F) an hour', {
        hint: 'Never more than 10 °C (18 °F) above what it has been cured to so far: it sags.',
      }),
      step('post-down', 'Held, then cooled in the shut oven'),
    ],
  };
}

export function bondPrep(): ChecklistStage {
  return {
    stage: 'bondPrep',
    steps: [
      step('bond-washed', 'Washed with water, dried', {
        hint: 'Amine blush washes off. Sanding rubs it in.',
      }),
      step('bond-clean', 'Bore free of wax, PVA and silicone'),
      step('bond-sanded', 'Sanded dull, dust wiped off', { hint: 'Mask and extraction.' }),
      step('bond-water', 'Water stays a whole sheet on it', {
        hint: 'Where it pulls back into drops, glue will not hold.',
      }),
      step('bond-gap', 'Gap 0.1 to 0.3 mm (4 to 12 mil) all round', {
        hint: 'A glass ply between carbon and aluminum, or the aluminum corrodes.',
      }),
    ],
  };
}
