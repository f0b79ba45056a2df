import { lifeOfCup } from '#app/laying-up/mix/cup-life.ts';
import {
  assumedEnergy,
  energyOf,
  type FittedEnergy,
  lifePoints,
  usualEnergies,
} from '#app/laying-up/mix/resin-energy.ts';
import { Explain } from '#app/parts/explain.tsx';
import { show } from '#app/state/show.ts';
import type { TimePoint } from '#calc';
import type { PotLife, ResinSystem } from '#shared/record/resin-system.ts';
import { formatNumber } from '#shared/units/format.ts';
import { formatDuration } from '#shared/units/time.ts';

const kilojoules = (energy: number) => `${formatNumber(energy / 1000, 0)}\u00a0kJ/mol`;

/** How well the points stand on their line. */
export function fitWords({ energy, residual, points }: FittedEnergy): string {
  const check =
    points === 2 ? 'two points, no check' : `${points} points, ${show(residual, 'fraction')} off the line`;
  const strange = energy < usualEnergies.from || energy > usualEnergies.to;
  const outside = `outside ${kilojoules(usualEnergies.from)} to ${kilojoules(usualEnergies.to)}, where epoxies lie: check the points`;
  return strange ? `${check}; ${outside}` : check;
}

function Energy({ kind, points, assumes }: { kind: string; points: readonly TimePoint[]; assumes: boolean }) {
  const fit = energyOf(points);
  if (!fit && !(assumes && points.length > 0)) return null;
  return (
    <>
      <p>
        {kind}: <strong>{kilojoules(fit?.energy ?? assumedEnergy)}</strong>,{' '}
        {fit ? fitWords(fit) : 'assumed: one temperature cannot tell'}
      </p>
      {fit && (
        <Explain
          of={`${kind}: activation energy`}
          formula="ln t = Ea/(R T) + b"
          values={points.map((p): readonly [string, string] => [
            show(p.temperature, 'temperature', 0),
            formatDuration(p.time),
          ])}
          source="ASTM C1074, annex on apparent activation energy; least squares"
          sure={
            fit.points === 2
              ? 'Two points always fit exactly, which proves nothing. Between them it is good, far outside a guess.'
              : 'What the points stray from one line says how far to trust it.'
          }
        />
      )}
    </>
  );
}

/** Another mass at the sheet's own temperature: not fitted, so it can prove the heat balance wrong. */
export function massCheck(resin: ResinSystem): { sheet: PotLife; reckoned: number } | undefined {
  const { potLife, morePotLives = [] } = resin;
  const sheet = morePotLives.find(
    (p) =>
      Math.abs(p.temperature - potLife.temperature) < 0.6 &&
      p.ends === potLife.ends &&
      Math.abs(p.mass / potLife.mass - 1) > 0.1,
  );
  if (!sheet) return undefined;
  const at = (mass: number) =>
    lifeOfCup(resin, { mass, resin: potLife.temperature, air: potLife.temperature, assumed: false });
  const own = at(potLife.mass);
  const other = at(sheet.mass);
  if (own.bySheetAlone || other.bySheetAlone) return undefined;
  return { sheet, reckoned: (potLife.time * other.usable) / own.usable };
}

/** Within this the heat of a cup is as good as such a balance gets (common practice, no source). */
const agrees = 0.25;

function MassCheck({ resin }: { resin: ResinSystem }) {
  const check = massCheck(resin);
  if (!check) return null;
  const { sheet, reckoned } = check;
  const off = Math.abs(reckoned / sheet.time - 1);
  return (
    <p>
      {show(sheet.mass, 'mass', 0)}: the data sheet has {formatDuration(sheet.time)}, the heat of the cup
      comes to <strong>{formatDuration(60 * Math.round(reckoned / 60))}</strong>.{' '}
      {off <= agrees ? 'They agree.' : 'They do not agree: trust the data sheet, and mix small.'}
    </p>
  );
}

/** How time follows temperature for this resin: pot life, gel and cure each by itself. */
export function ResinFit({ resin }: { resin: ResinSystem }) {
  const gels = resin.gelTimes ?? [];
  const mass = gels[0]?.mass;
  return (
    <section class="resin-fit">
      <h2>How time follows heat</h2>
      <Energy kind="Pot life" points={lifePoints(resin)} assumes />
      <Energy kind="Gel" points={gels.filter((g) => g.mass === mass)} assumes={false} />
      <Energy kind="Full cure" points={resin.curePoints} assumes />
      <MassCheck resin={resin} />
    </section>
  );
}
