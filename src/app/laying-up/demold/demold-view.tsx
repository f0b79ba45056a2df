import { Facts } from '#app/parts/facts.tsx';
import { BigFigure, Lines } from '#app/parts/figure.tsx';
import { Caution, Warning } from '#app/parts/warning.tsx';
import { show, showSplit } from '#app/state/show.ts';
import type { ReleaseSystem } from '#shared/record/release-system.ts';
import { ExplainLoose, ExplainRoom } from './demold-explains.tsx';
import { clearanceAt, type Fit, type Verdict, verdictAt } from './demold-fit.ts';
import { gripsSentence, materialWords, setWords, showRoom, wallWords } from './demold-words.ts';
import { RoomPlot } from './room-plot.tsx';
import { TubeSection } from './tube-section.tsx';

interface Props {
  fit: Fit;
  /** K */
  now: number;
  /** Where that comes from: 'The part, read 4:20 PM' */
  from: string;
  release: ReleaseSystem | undefined;
}

function Answer({ verdict, now, release }: { verdict: Verdict } & Omit<Props, 'fit' | 'from'>) {
  if (verdict.is === 'grips') {
    return (
      <Warning kind="amber" title={`Gripped at ${show(now, 'temperature', 0)}, and colder too`}>
        {gripsSentence(verdict.below, release)}
      </Warning>
    );
  }
  if (verdict.is === 'wait') {
    const { figure, unit } = showSplit(verdict.below, 'temperature', 0);
    return (
      <>
        <BigFigure label="Loose below" figure={figure} unit={unit} />
        <p>
          {show(now, 'temperature', 0)} now: {show(now - verdict.below, 'temperatureDifference', 0)} to go.
          Pulled before, it scores.
        </p>
      </>
    );
  }
  const [figure = '', unit = ''] = showRoom(verdict.clearance).split(/\s/);
  return (
    <>
      <BigFigure
        label={`Room on the diameter at ${show(now, 'temperature', 0)}`}
        figure={figure}
        unit={unit}
      />
      {verdict.barely && (
        <p>Less than typical figures can tell from none: cool it further if you can, then twist first.</p>
      )}
    </>
  );
}

function sectionWords(fit: Fit, now: number): string {
  const room = clearanceAt(fit, now);
  return room > 0
    ? `Cut across at ${show(now, 'temperature', 0)}: room all round, drawn far too wide.`
    : `Cut across at ${show(now, 'temperature', 0)}: ${showRoom(-room)} too tight on the diameter.`;
}

function GripFacts() {
  return (
    <Facts title="What grips and what lets go" source="Common practice, no source.">
      <li>Aluminum shrinks away from a tube with carbon around the hoop; steel does so half as much.</li>
      <li>Glass grips: it shrinks about as much as steel, and little less than aluminum.</li>
      <li>A wall with all its fibers along the tube grips anything.</li>
      <li>Twist first, pull second, straight, against a stop.</li>
    </Facts>
  );
}

/** Whether it is loose, drawn, and what that rests on. */
export function DemoldView({ fit, now, from, release }: Props) {
  const verdict = verdictAt(fit, now);
  const { growth, material } = fit;
  return (
    <>
      <Answer verdict={verdict} now={now} release={release} />
      <p class="quiet">{from}.</p>
      <TubeSection
        clearance={clearanceAt(fit, now)}
        label={
          verdict.is === 'loose' ? 'Mandrel and tube with a gap between them' : 'Mandrel gripped by the tube'
        }
        says={sectionWords(fit, now)}
      />
      <ExplainRoom fit={fit} now={now} />
      <RoomPlot fit={fit} now={now} />
      <ExplainLoose fit={fit} />
      <h2>What this rests on</h2>
      <Lines
        rows={[
          ['Mandrel', `${materialWords[material]}, ${show(fit.diameter, 'diameter', 1)}`],
          ['Wall', wallWords(fit)],
          ['Shrinks after gel', show(growth.shrinkage, 'fraction', 2)],
          ['Set at', show(fit.set.temperature, 'temperature', 0)],
        ]}
      />
      <p>{setWords(fit.set)}</p>
      <GripFacts />
      <Caution>
        Typical figures, not for design: the first tube on a new mandrel tells more than this page.
      </Caution>
    </>
  );
}
