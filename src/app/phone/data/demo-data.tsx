import { HoldAction } from '#app/parts/hold-action.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Kept } from './kept.tsx';

const leave = async () => {
  const { leaveDemo } = await import('./demo.ts');
  await leaveDemo();
};

/** In the demo there is nothing to save and one thing to do: go home. */
export function DemoData() {
  return (
    <Screen
      title="Demo shop"
      back={{ to: '/shelf', label: 'Shelf' }}
      actions={<HoldAction onHeld={leave}>Hold to leave the demo shop</HoldAction>}
    >
      <p>
        Invented: the four spars of a small sailing canoe. It has a database of its own. Leaving takes it
        away, with whatever you tried in it, and your own record comes back as it was.
      </p>
      <Rows label="More with the data">
        <Row
          to="/data/tables"
          title="Tables for a spreadsheet"
          about="Readings, and builds with their results"
        />
      </Rows>
      <Kept />
    </Screen>
  );
}
