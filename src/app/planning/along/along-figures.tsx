import { Lines } from '#app/parts/figure.tsx';
import { type SectionAt, sectionsAlong, tubeMassOf } from '#app/planning/carry/sections-along.ts';
import type { Tube } from '#app/planning/carry/tube-of-plan.ts';
import { show } from '#app/state/show.ts';
import type { WallSection } from '#calc';
import { rough, sayStiffness, sayTimes, softnessOf, softnessWords } from './along-quantities.ts';

function wallWords({ wallMin, wallMax }: WallSection): string {
  const [least, most] = [show(wallMin, 'thickness'), show(wallMax, 'thickness')];
  return least === most ? least : `${least} to ${most}`;
}

function bendingWords({ eiLeast, eiMost }: WallSection): string {
  const [least, most] = [sayStiffness(eiLeast), sayStiffness(eiMost)];
  return least === most ? least : `${least} to ${most}`;
}

/** All that is known of one place. */
export function HereLines({ tube, here: { at, section } }: { tube: Tube; here: SectionAt }) {
  const sections = sectionsAlong(tube);
  const area = rough(section.area, 'crossSection');
  const softness = softnessOf(sections)(section);
  return (
    <Lines
      head={['', `At ${show(at, 'length', 0)}`]}
      rows={[
        ['Bending, EI', bendingWords(section)],
        ['Twist, GJ', sayStiffness(section.gj)],
        ['Wall', wallWords(section)],
        ['Outside', show(section.outsideDiameter, 'diameter')],
        [
          'Weight of a length',
          section.massPerLength === undefined ? '–' : show(section.massPerLength, 'linearDensity'),
        ],
        ['Area of its wall', `${area.figure}\u00a0${area.unit}`],
        ['Softness when squeezed', `${sayTimes(softness)} ${softnessWords(softness, sections)}`],
      ]}
    />
  );
}

/** The whole tube: weight, and where it is softest and stiffest. */
export function WholeTube({ tube }: { tube: Tube }) {
  const mass = tubeMassOf(tube);
  const order = [...sectionsAlong(tube)].sort((a, b) => a.section.eiLeast - b.section.eiLeast);
  const [least, most] = [order[0], order.at(-1)];
  if (!least || !most) return null;
  const stiff = ({ at, section }: SectionAt) =>
    `${sayStiffness(section.eiLeast)} at ${show(at, 'length', 0)}`;
  return (
    <Lines
      head={['', 'Whole tube']}
      rows={[
        ['Weight', mass === undefined ? '–' : show(mass, 'mass', 0)],
        ['Bends most easily', stiff(least)],
        ['Stiffest', stiff(most)],
      ]}
    />
  );
}
