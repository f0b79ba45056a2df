import { Lines } from '#app/parts/figure.tsx';
import { show } from '#app/state/show.ts';
import type { StationForces, TubeChecks, WallSection } from '#calc';
import { capital, place } from './load-words.ts';
import { checkWords, marginWords } from './ruling.ts';
import { shearFlow, stationLines } from './station-margins.ts';

interface Props {
  checks: TubeChecks;
  station: number;
  /** The case that is told. */
  of: number;
  section: WallSection;
  at: number;
  /** Its name, where there are several. */
  name: string | undefined;
}

const often = (reserve: number) => (reserve > 99 ? 'over 99' : reserve.toFixed(2));

function forceRows(forces: StationForces, section: WallSection): string[][] {
  const { moment, shear, torque, axial } = forces;
  return [
    ['Moment', show(Math.abs(moment), 'moment')],
    ['Shear', show(Math.abs(shear), 'force')],
    ...(torque === 0 ? [] : [['Torque', show(Math.abs(torque), 'moment')]]),
    ...(axial === 0 ? [] : [[axial < 0 ? 'Pressed along' : 'Pulled along', show(Math.abs(axial), 'force')]]),
    ['Shear flow at the neutral axis', show(Number(shearFlow(section, forces).toPrecision(3)), 'lineLoad')],
    ['Wall, thinnest', show(section.wallMin, 'thickness')],
  ];
}

/** Every check at the picked station, and what acts on it there. */
export function StationTable({ checks, station, of, section, at, name }: Props) {
  const lines = stationLines(checks, station, of);
  if (!lines) return null;
  return (
    <section aria-label="The picked station" class="station-table margin-lines">
      <h2>
        At {place(at)}
        {name && `, ${name}`}
      </h2>
      <Lines
        head={['', 'loads may grow', 'margin']}
        rows={lines.margins.map(({ check, reserve, margin }) => [
          capital(checkWords[check]),
          `${often(reserve)} times`,
          marginWords(margin),
        ])}
      />
      <Lines rows={forceRows(lines.forces, section)} />
    </section>
  );
}
