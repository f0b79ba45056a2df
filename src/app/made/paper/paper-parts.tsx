import { stageWords } from '#app/laying-up/build/stage-words.ts';
import { Photo } from '#app/made/record/photo.tsx';
import { guardWords, outcomeWords, reasonWords } from '#app/made/record/say-entry.ts';
import { wallsMeasured } from '#app/made/results/by-thickness.ts';
import { ratingNames, ratingWords } from '#app/made/results/rating-words.ts';
import { Lines } from '#app/parts/figure.tsx';
import { CutDimensions } from '#app/planning/cutting/cut-dimensions.tsx';
import { show } from '#app/state/show.ts';
import type { BuildState } from '#shared/record/build-state.ts';
import type { StageState } from '#shared/record/route-state.ts';
import { formatClockTime } from '#shared/units/time.ts';
import { paperTime } from './day.ts';
import { cupRows, materialRows, piecesOf, plannedRows } from './facts-of.ts';
import type { PaperLine } from './time-line-rows.ts';

export function Planned({ state }: { state: BuildState }) {
  return (
    <section class="paper-part">
      <h2>As planned when it was started</h2>
      <Lines rows={plannedRows(state)} />
      <h2>Made of</h2>
      <Lines rows={materialRows(state)} />
    </section>
  );
}

/** What to set on the rule for each piece, every 250 mm (10 in). */
const every = { metric: 0.25, inchPound: 0.254 };

export function Pieces({ state, units }: { state: BuildState; units: keyof typeof every }) {
  return piecesOf(state).map((piece) => (
    <section key={piece.id} class="paper-part">
      <h2>{piece.name === `Piece ${piece.number}` ? piece.name : `Piece ${piece.number}: ${piece.name}`}</h2>
      <CutDimensions piece={piece} every={every[units]} />
    </section>
  ));
}

function StageOnPaper({ stage }: { stage: StageState }) {
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={2}>
          {stageWords[stage.stage]}
          {stage.round > 1 && `, round ${stage.round}`}
        </th>
      </tr>
      {stage.steps.map(({ key, step, done }) => (
        <tr key={key}>
          <td>{step.text}</td>
          <td>
            {done ? (done.timeNotSeen ? 'done, time not seen' : paperTime(done.at, done.zone)) : 'not ticked'}
          </td>
        </tr>
      ))}
    </tbody>
  );
}

/** Every step with its time, and what was gone past. */
export function Steps({ state }: { state: BuildState }) {
  return (
    <section>
      <h2>Steps</h2>
      <table class="lines paper-table">
        {state.stages.map((stage) => (
          <StageOnPaper key={stage.key} stage={stage} />
        ))}
      </table>
      {state.overrides.map(({ entry, root }) => (
        <p key={root}>
          Went on without {guardWords[entry.guard]}, {formatClockTime(entry.happenedAt, entry.zone)}:{' '}
          {reasonWords[entry.reason]}.
        </p>
      ))}
    </section>
  );
}

export function Cups({ state }: { state: BuildState }) {
  const rows = cupRows(state);
  if (rows.length === 0) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what slides sideways must slide by keys too
    <section class="paper-part paper-wide" aria-label="Cups" tabIndex={0}>
      <h2>Cups</h2>
      <Lines head={['Cup', 'resin', 'hardener', 'off', 'hardener in', 'out of cup', 'usable']} rows={rows} />
    </section>
  );
}

/** Measured walls, ratings, verdict and photos. */
export function Outcome({ state }: { state: BuildState }) {
  const walls = wallsMeasured(state);
  const ratings = [...state.ratings.values()].map(({ entry }) => [
    ratingNames[entry.what],
    ratingWords[entry.what][entry.value] ?? String(entry.value),
  ]);
  const judged = state.disposition?.entry;
  const rows = [
    ...ratings,
    ...(judged ? [['Judged', [outcomeWords[judged.outcome], judged.text].filter(Boolean).join(': ')]] : []),
  ];
  return (
    <section class="paper-part">
      {rows.length > 0 && <h2>How it came out</h2>}
      {rows.length > 0 && <Lines rows={rows} />}
      {walls.length > 0 && (
        <Lines
          head={['At', 'across', 'wall', 'a ply']}
          rows={walls.map((w) => [
            show(w.station, 'length', 0),
            show(w.outsideDiameter, 'diameter'),
            show(w.wall, 'thickness'),
            show(w.plyThickness, 'thickness'),
          ])}
        />
      )}
      {state.photos.map(({ entry }) => (
        <figure key={entry.id} class="paper-photo">
          <Photo hash={entry.hash} alt={entry.caption ?? 'Photo of the tube'} />
          {entry.caption && <figcaption>{entry.caption}</figcaption>}
        </figure>
      ))}
    </section>
  );
}

/** Everything that was entered; what was corrected stays to be seen. */
export function AllLines({ title, lines }: { title: string; lines: readonly PaperLine[] }) {
  return (
    <section class="paper-lines">
      <h2>{title}</h2>
      <table class="lines paper-table">
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">What</th>
            <th scope="col">Value</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((l) => (
            <tr key={l.root}>
              <td>{l.when}</td>
              <td>{l.struck ? <del>{l.what}</del> : l.what}</td>
              <td>
                {l.before.map((b, i) => (
                  <del key={i}>{b} </del>
                ))}
                {l.struck ? <del>{l.value}</del> : l.value}
                {l.struck ? ' struck out' : l.before.length > 0 ? ' corrected' : ''}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
