import { useEffect } from 'preact/hooks';
import { LinkButton } from '#app/parts/action.tsx';
import { Row, Rows } from '#app/parts/rows.tsx';
import { Rule } from '#app/parts/rule.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { anyDoc } from '#app/state/documents.ts';
import { now, zoneAt } from '#app/state/now.ts';
import { shop } from '#app/state/shop.ts';
import { formatClockTime, formatDay } from '#shared/units/time.ts';
import { countOf } from './file-words.ts';
import { RestoreActions } from './restore-actions.tsx';
import { faultWords, holdsWords } from './restore-words.ts';
import { type Restoring, restoring } from './restoring.ts';

const back = { to: '/data', label: 'Data and backup' };

function Refused({ at: { name, fault, added } }: { at: Restoring & { step: 'refused' } }) {
  return (
    <Warning kind="stop" title={`${name} was not taken in`} announce>
      <p>
        Line {fault.line}. {faultWords[fault.reason]}
      </p>
      <p>
        {added === 0
          ? 'Nothing was stored: your record is as it was.'
          : `${countOf(added, 'record')} had been added by then, and stay. Nothing was taken away.`}
      </p>
      {fault.reason !== 'notJson' && <p class="small">{fault.detail}</p>}
    </Warning>
  );
}

const stoppedWords = {
  full: 'This phone has no room left. Free some space, then go on: it takes up where it stopped.',
  refused: 'The phone refused to write on. Go on: it takes up where it stopped.',
  asked: 'You stopped it. What is in stays, and going on takes up where it stopped.',
} as const;

/** How far it is, on a rule. */
function Share({ share, what }: { share: number; what: string }) {
  const percent = Math.floor(share * 100);
  return <Rule label={`${percent} % ${what}`} from={0} to={100} value={percent} unit="%" />;
}

function Summary({ at }: { at: Restoring & { step: 'checked' | 'stopped' } }) {
  const { checked } = at;
  const made = checked.at;
  return (
    <>
      <p>
        This backup of {formatDay(made, zoneAt(made), now.value)}, {formatClockTime(made, zoneAt(made))} holds{' '}
        {holdsWords(checked.holds)}.
      </p>
      <p>What is here already stays as it is. What is missing is added, and nothing is taken away.</p>
    </>
  );
}

function Done({ outcome }: { outcome: (Restoring & { step: 'done' })['outcome'] }) {
  const { added, already, conflicts } = outcome;
  const sum = added.entries + added.headers + added.revisions + added.photos;
  return (
    <>
      <p role="status">
        {sum === 0
          ? `Nothing was missing: all ${countOf(already, 'record')} were here already.`
          : `${countOf(sum, 'record')} added, ${already.toLocaleString('en-US')} were here already.`}
      </p>
      {conflicts.length > 0 && (
        <>
          <h2>Changed on two phones: choose which holds</h2>
          <Rows label="Changed on two phones">
            {conflicts.map((doc) => {
              const found = anyDoc(doc);
              if (!found) return null;
              const { type } = found.revision;
              const to = type === 'plan' ? `/plan/${doc}` : `/shelf/${type}/${doc}`;
              return <Row key={doc} to={to} title={found.body.name} about="Both versions are kept" />;
            })}
          </Rows>
        </>
      )}
    </>
  );
}

/** What is in this file, and shall it come in? */
export function RestoreScreen() {
  const at = restoring.value;
  useEffect(() => {
    if (restoring.peek().step === 'done') restoring.value = { step: 'choose' };
  }, []);
  if (shop.value.phase === 'open' && shop.value.demo) {
    return (
      <Screen
        title="Restore a backup"
        back={back}
        actions={<LinkButton to="/data">Leave the demo first</LinkButton>}
      >
        <p>
          This is the demo shop, and leaving it takes everything in it away. Restore into your own record.
        </p>
      </Screen>
    );
  }
  return (
    <Screen
      title={at.step === 'done' ? 'Merged in' : 'Restore a backup'}
      back={back}
      actions={<RestoreActions at={at} />}
    >
      {at.step === 'choose' && (
        <p>
          A backup is a text file saved on this Data screen, here or on another phone. Every line of it is
          checked before anything is stored, and it is merged into what is here: nothing is taken away.
        </p>
      )}
      {at.step === 'refused' && <Refused at={at} />}
      {at.step === 'stopped' && (
        <Warning kind="stop" title="Not all of it is in" announce>
          {stoppedWords[at.why]}
        </Warning>
      )}
      {(at.step === 'checked' || at.step === 'stopped') && <Summary at={at} />}
      {at.step === 'done' && <Done outcome={at.outcome} />}
      {at.step === 'reading' && (
        <>
          <p role="status">Reading it, line by line. Nothing is stored yet.</p>
          <Share share={at.share} what="read" />
        </>
      )}
      {at.step === 'merging' && (
        <>
          <p role="status">Merging it in.</p>
          <Share share={at.share} what="merged in" />
        </>
      )}
    </Screen>
  );
}
