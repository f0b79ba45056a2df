import { type Factor, type FactorKind, factorKinds } from '#app/made/learned/factors.ts';
import { Ask } from '#app/parts/ask.tsx';
import { Empty, Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { countWords, kindWords, shownAs, spreadWords } from './factor-words.ts';
import { useFactors } from './use-factors.ts';

function FactorRow({ kind, factors }: { kind: FactorKind; factors: readonly Factor[] }) {
  const [first, ...others] = factors;
  if (!first) return null;
  const { of, spread, book } = first;
  const more = others.length > 0 ? ` · and ${others.length} more` : '';
  return (
    <Row
      to={`/factors/${kind}`}
      title={kindWords[kind].title}
      about={
        <>
          {of && `${of} · `}
          {countWords(first)}
          <br />
          {spreadWords(first)}
          {more}
        </>
      }
      value={
        <>
          {shownAs(kind, spread.median)}
          {book !== undefined && (
            <>
              <br />
              <span class="quiet small">book {shownAs(kind, book)}</span>
            </>
          )}
        </>
      }
    />
  );
}

/** What do this shop's own builds say? */
export function FactorsScreen() {
  const factors = useFactors();
  return (
    <Screen title="What this shop does" back={{ to: '/record', label: 'Record' }}>
      {factors && factors.length === 0 && (
        <>
          <Empty>
            Nothing yet. It comes from your own builds: weigh what stays in the cups, weigh and measure the
            tube, and log the oven.
          </Empty>
          <Ask term="shop-figures" asks="What figures are these?" line />
        </>
      )}
      {factors && factors.length > 0 && (
        <>
          <p class="quiet">The middle figure of your own builds, which one bad one hardly moves.</p>
          <Rows label="Factors">
            {factorKinds.map((kind) => (
              <FactorRow key={kind} kind={kind} factors={factors.filter((f) => f.kind === kind)} />
            ))}
          </Rows>
        </>
      )}
    </Screen>
  );
}
