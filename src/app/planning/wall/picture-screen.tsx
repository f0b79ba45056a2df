import { type Signal, useSignal } from '@preact/signals';
import { Beside, Secondary } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { useWidth } from '#app/parts/use-width.ts';
import type { Params } from '#app/router.ts';
import { show } from '#app/state/show.ts';
import { NoPlan } from './no-plan.tsx';
import { OffsetTable } from './offset-table.tsx';
import { CrossSection } from './pictures/cross-section.tsx';
import { FlatShape } from './pictures/flat-shape.tsx';
import { SideView } from './pictures/side-view.tsx';
import { Unrolled } from './pictures/unrolled.tsx';
import { WallAlong } from './pictures/wall-along.tsx';
import { PlaceAlong } from './round-section.tsx';
import { aroundWords } from './seam-words.ts';
import { type Drawn, wallDraft } from './wall-draft.ts';
import { flatPiece } from './wall-model.ts';
import { pieceName } from './wall-words.ts';
import './wall.css';

interface Props {
  name: string;
  drawn: Drawn;
  /** px the picture is drawn wide */
  wide: number;
  at: Signal<number>;
}

const titles: Record<string, string> = {
  along: 'Wall along the tube',
  unrolled: 'Unrolled',
  cut: 'Cut across',
  side: 'Finished, from its 90° side',
};

/** 'flat-2' is the second piece. */
function flatIndex(name: string): number | undefined {
  const [, number] = /^flat-(\d+)$/.exec(name) ?? [];
  return number === undefined ? undefined : Number(number) - 1;
}

function titleOf(name: string, { plan }: Drawn): string {
  const index = flatIndex(name);
  if (index === undefined) return titles[name] ?? 'No such picture';
  return `${pieceName(plan.wall.pieces[index], index)}, flat`;
}

function Picture({ name, drawn, wide, at }: Props) {
  const { plan, roll } = drawn;
  const { pressedAt } = plan.wall;
  const tall = Math.max(220, Math.round(Math.min(innerHeight * 0.5, wide)));
  const index = flatIndex(name);
  const piece = index === undefined ? undefined : plan.wall.pieces[index];
  if (piece && index !== undefined) {
    const flat = flatPiece(roll, index);
    return (
      <FlatShape
        flat={flat}
        angle={piece.kind === 'cloth' ? piece.angle : undefined}
        tallest={tall}
        wide={wide}
      />
    );
  }
  switch (name) {
    case 'along':
      return <WallAlong roll={roll} height={tall} wide={wide} />;
    case 'unrolled':
      return <Unrolled roll={roll} height={tall} pressedAt={pressedAt} wide={wide} />;
    case 'cut':
      return <CrossSection roll={roll} at={at.value} pressedAt={pressedAt} wide={wide} tallest={wide} />;
    case 'side':
      return <SideView roll={roll} tallest={tall} wide={wide} />;
    default:
      return <p>There is no picture of this name.</p>;
  }
}

function Below({ name, drawn, at }: Omit<Props, 'wide'>) {
  const index = flatIndex(name);
  if (index !== undefined && drawn.roll.pieces[index])
    return <OffsetTable flat={flatPiece(drawn.roll, index)} />;
  if (name !== 'cut') return null;
  return (
    <>
      <p>
        At {show(at.value, 'length', 0)}: {aroundWords(drawn.roll, at.value)}
      </p>
      <PlaceAlong length={drawn.roll.length} at={at.value} onSet={(m) => (at.value = m)} />
    </>
  );
}

function Zoomed({ name, drawn }: { name: string; drawn: Drawn }) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const zoom = useSignal(1);
  const at = useSignal(drawn.roll.length / 4);
  return (
    <>
      <div ref={ref} class="picture-page">
        <Picture name={name} drawn={drawn} wide={width.value * zoom.value} at={at} />
      </div>
      <Below name={name} drawn={drawn} at={at} />
      <div class="picture-zoom">
        <Beside>
          <Secondary onPress={() => (zoom.value = Math.max(1, zoom.value / 2))}>Smaller</Secondary>
          <Secondary onPress={() => (zoom.value = Math.min(8, zoom.value * 2))}>
            Larger{zoom.value > 1 ? `, now ${zoom.value} times` : ''}
          </Secondary>
          <Secondary onPress={() => window.print()}>Print</Secondary>
        </Beside>
      </div>
    </>
  );
}

/** One picture, as large as the screen lets it be, and on paper. */
export function PictureScreen({ params }: { params: Params }) {
  const doc = params.doc ?? '';
  const draft = wallDraft(doc);
  const plan = draft?.plan.value;
  if (!draft || !plan) return <NoPlan />;
  const drawn = draft.drawn.value;
  const name = params.name ?? '';
  return (
    <div class="picture-screen">
      <Screen
        kicker={plan.name}
        title={titleOf(name, drawn)}
        back={{ to: `/plan/${doc}/wall`, label: 'Wall' }}
      >
        <Zoomed name={name} drawn={drawn} />
      </Screen>
    </div>
  );
}
