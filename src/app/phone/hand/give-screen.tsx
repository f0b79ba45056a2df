import { useSignal } from '@preact/signals';
import { Absent } from '#app/parts/absent.tsx';
import { Action, Secondary } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { HandOver } from '#app/phone/data/hand-over.tsx';
import type { Params } from '#app/router.ts';
import { findDoc } from '#app/state/documents.ts';
import { useBuild } from '#app/state/use-journal.ts';
import { CodesView } from './codes-view.tsx';
import { codesFor, fileOf, type Parcel, parcelOfBuild, parcelOfPlan } from './parcel.ts';
import './hand.css';

interface Props {
  parcel: Parcel;
  back: { to: string; label: string };
  /** What goes with it, in a sentence. */
  about: string;
}

function Give({ parcel, back, about }: Props) {
  const codes = useSignal<string[] | 'tooMany' | undefined>(undefined);
  const shown = codes.value;
  if (Array.isArray(shown)) {
    return (
      <Screen
        keys
        title="For its camera"
        back={back}
        actions={
          <Action
            onPress={() => {
              codes.value = undefined;
            }}
          >
            The other phone has it
          </Action>
        }
      >
        <CodesView codes={shown} />
        <p>
          On the other phone: Shelf, Data and backup, then ‘Take from another phone’. Both phones may be
          offline.
        </p>
      </Screen>
    );
  }
  return (
    <Screen
      kicker={parcel.name}
      title="To another phone"
      back={back}
      actions={
        <>
          <Secondary
            onPress={async () => {
              codes.value = (await codesFor(parcel)) ?? 'tooMany';
            }}
          >
            Show it as codes for a camera
          </Secondary>
          <HandOver what="file" make={() => fileOf(parcel)} />
        </>
      }
    >
      <p>{about}</p>
      <p>The other phone merges it into its own record: nothing is taken away there, nothing comes twice.</p>
      {shown === 'tooMany' && (
        <p role="status">
          It is too much for codes: more than eighty would have to be scanned. Send the file instead.
        </p>
      )}
    </Screen>
  );
}

/** How does this tube get to the other phone? */
export function GiveBuildScreen({ params }: { params: Params }) {
  const state = useBuild(params.id);
  if (state === undefined) return null;
  if (state === 'absent') return <Absent what="tube" />;
  const { header, ovenLoads, photos } = state;
  const name = `${header.name} no. ${header.number}`;
  const loads = ovenLoads.map((f) => f.entry.ovenLoad);
  return (
    <Give
      parcel={parcelOfBuild(name, header.id, loads)}
      back={{ to: `/record/build/${header.id}`, label: name }}
      about={`Everything that was entered of this tube${loads.length > 0 ? ', and its oven load,' : ''} goes along.${photos.length > 0 ? ' Its photos go with the file, not with the codes.' : ''}`}
    />
  );
}

/** How does this plan get to the other phone? */
export function GivePlanScreen({ params }: { params: Params }) {
  const found = findDoc('plan', params.doc);
  if (!found) return <Absent what="plan" />;
  return (
    <Give
      parcel={parcelOfPlan(found.doc, found.body)}
      back={{ to: `/plan/${found.doc}`, label: found.body.name }}
      about="The plan goes along with its cloth, resin, release, tape, mandrel and checklist. If both phones changed it, the other one shows both and asks which holds."
    />
  );
}
