import type { ChecklistStage } from '#shared/record/checklist.ts';
import { step } from './starter-step.ts';

// Everything in the starter checklists is common practice, no source, unless a line names one.

export function mandrelPrep(): ChecklistStage {
  return {
    stage: 'mandrelPrep',
    steps: [
      step('mandrel-measured', 'Mandrel picked, diameter measured', {
        hint: 'Measured where the first ply will lie. Leave 50 to 100 mm (2 to 4 in) bare at each end to grip and pull.',
      }),
      step('mandrel-straight', 'Rolled on the bench: straight', {
        hint: 'Look for light under it. More than 0.5 mm to the meter (1/32 in in 5 ft) shows in the tube.',
      }),
      step('mandrel-edges', 'Edges deburred, pulling end chamfered'),
      step('mandrel-polished', 'Scratches filled and polished out'),
      step('mandrel-vented', 'Closed ends vented', {
        hint: 'Air shut inside swells in the oven and pushes a plug out.',
      }),
      step('mandrel-clean', 'Wiped until the white rag stays white', {
        hint: 'Solvent: gloves on, door open, nothing hot near, and all of it gone before the oven.',
      }),
      step('mandrel-warm', 'Mandrel at shop temperature'),
    ],
  };
}

export function cut(): ChecklistStage {
  return {
    stage: 'cut',
    steps: [
      step('cut-bag', 'Cloth at shop temperature before opening', {
        hint: 'Cold cloth out of its bag draws water from the air.',
      }),
      step('cut-marked', 'Warp, datum edge, end 0, inside marked'),
      step('cut-masked', 'Edges masked so they cannot fray'),
      step('cut-cut', 'Cut down the middle of the masking', {
        hint: 'Mask and extraction. Carbon dust conducts: keep it out of fans, plugs and elements.',
      }),
      step('cut-weighed', 'Dry cloth weighed and written down', {
        role: 'weighCloth',
        hint: 'Less the masking that stays on. Dry aramid first: the water in it weighs.',
      }),
      step('cut-rolled', 'Rolled on a tube, film between, no fold'),
    ],
  };
}

export function setUp(): ChecklistStage {
  return {
    stage: 'setUp',
    steps: [
      step('setup-surroundings', 'Air, resin, mandrel, humidity read', {
        role: 'surroundings',
        hint: 'Wait unless mandrel and cloth are 3 °C (5 °F) above the dew point, air under 70 % and over 15 °C (59 °F).',
      }),
      step('setup-labels', 'Both labels read, resin and hardener clear', {
        hint: 'Crystals in the resin: warm to 50 to 60 °C (120 to 140 °F) until clear, and let it cool again.',
      }),
      step('setup-eyes', 'Eye protection on, eyewash in reach', {
        hint: 'Amine hardener burns eyes. Skin that meets it again and again may stop bearing it for good.',
      }),
      step('setup-gloves', 'Two pairs of gloves laid out', {
        hint: 'Change them often. Never solvent on skin: it carries the hardener in.',
      }),
      step('setup-scale', 'Scale warm, auto-off off, weight proved'),
      step('setup-cups', 'Unwaxed cups and sticks, one to spare'),
      step('setup-tools', 'Squeegee, rollers, scissors laid out'),
      step('setup-tape', 'Shrink tape on its holder, end folded'),
      step('setup-oven', 'Oven, sensors and cutoff proved', {
        hint: 'Cutoff of its own 10 °C (18 °F) above the lowest limit: against fire, it does not guard the tube. Smoke alarm and extinguisher at hand.',
      }),
      step('setup-dry-run', 'Dry run: every move made once', {
        role: 'dryRun',
        hint: 'Once hardener meets resin nothing can be looked for.',
      }),
      step('setup-turning', 'Stand turning by itself', { role: 'rotation' }),
    ],
  };
}
