import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { Action } from '#app/parts/action.tsx';
import { DateField } from '#app/parts/date-field.tsx';
import { Choice, QuantityField, TextField } from '#app/parts/field.tsx';
import { HoldAction } from '#app/parts/hold-action.tsx';
import { allGood, quantityInput } from '#app/parts/quantity-input.ts';
import { Screen } from '#app/parts/screen.tsx';
import { goInstead } from '#app/router.ts';
import { record, retract } from '#app/state/record.ts';
import type { Entry, EntryDraft } from '#shared/record/entry.ts';
import type { Fact } from '#shared/record/journal.ts';
import { fixable } from './fixable.ts';
import { orderProblem } from './order-problem.ts';
import { type Subject, sayEntry } from './say-entry.ts';
import { fromFieldText, toFieldText, whenProblem } from './when-text.ts';

interface Props {
  subject: Subject;
  fact: Fact<Entry>;
  back: { to: string; label: string };
}

function fieldOf(entry: Entry, key: string): unknown {
  return (entry as unknown as Record<string, unknown>)[key];
}

/** The fields that can be put right, filled with what stands there. */
function useFix(entry: Entry) {
  return useMemo(() => {
    const { numbers, words, text } = fixable(entry);
    return {
      numbers: numbers.map((n) => {
        const value = fieldOf(entry, n.key);
        return { ...n, input: quantityInput(typeof value === 'number' ? value : undefined, n.options) };
      }),
      words,
      text,
    };
  }, [entry]);
}

/** The correction as an entry: everything as it was, but for what was typed. */
function correction(
  entry: Entry,
  root: string,
  changed: Record<string, unknown>,
  happenedAt: number,
): EntryDraft {
  const { id, recordedAt, zone, device, record: _record, v, typed, ...rest } = entry;
  const kept = Object.fromEntries(
    Object.entries({ ...rest, ...changed }).filter(([, value]) => value !== undefined),
  );
  return { ...kept, corrects: root, happenedAt } as unknown as EntryDraft;
}

/** Puts one line of the time line right. What was there stays, struck through. */
export function FixForm({ subject, fact, back }: Props) {
  const { entry, root } = fact;
  const fix = useFix(entry);
  const when = useSignal(toFieldText(entry.happenedAt, entry.zone));
  const word = useSignal(String(fieldOf(entry, fix.words[0]?.key ?? '') ?? ''));
  const text = useSignal(String(fieldOf(entry, fix.text?.key ?? '') ?? ''));
  const whenWrong = useSignal<string | undefined>(undefined);
  const said = sayEntry(subject, entry);

  const save = async () => {
    const at = fromFieldText(when.value, entry.zone);
    const untouched = when.value === toFieldText(entry.happenedAt, entry.zone);
    whenWrong.value = untouched
      ? undefined
      : (whenProblem(at, Date.now()) ?? (at === undefined ? undefined : orderProblem(subject, entry, at)));
    const good = allGood(fix.numbers.map((n) => n.input));
    if (!good || whenWrong.value || at === undefined) return;
    const typed = Object.fromEntries(fix.numbers.map((n) => [n.key, n.input.typed.value]));
    const changed = {
      ...Object.fromEntries(fix.numbers.map((n) => [n.key, n.input.si.value])),
      ...(fix.words[0] && { [fix.words[0].key]: word.value }),
      ...(fix.text && { [fix.text.key]: text.value.trim() || undefined }),
      ...(fix.numbers.length > 0 && { typed: fix.numbers.length === 1 ? Object.values(typed)[0] : typed }),
    };
    const happenedAt = untouched ? entry.happenedAt : at;
    if (await record(correction(entry, root, changed, happenedAt))) goInstead(back.to);
  };
  const strike = async () => {
    if (await retract(subject.header.id, root)) goInstead(back.to);
  };

  return (
    <Screen
      kicker={[said.what, said.value].filter(Boolean).join(' · ')}
      title="Correct this line"
      back={back}
      actions={
        <>
          {!fact.retracted && (
            <HoldAction small onHeld={strike}>
              Hold to strike it out
            </HoldAction>
          )}
          <Action onPress={save}>{fact.retracted ? 'Put it back like this' : 'It was like this'}</Action>
        </>
      }
    >
      {fix.numbers.map((n) => (
        <QuantityField key={n.key} label={n.label} input={n.input} />
      ))}
      {fix.words.map((w) => (
        <Choice
          key={w.key}
          label={w.label}
          value={word.value}
          options={w.words}
          onChange={(value) => {
            word.value = value;
          }}
        />
      ))}
      {fix.text && <TextField label={fix.text.label} text={text} long />}
      <DateField label="When it happened" type="datetime-local" text={when} problem={whenWrong.value} />
      <p class="quiet small">What was there before stays in the time line, struck through.</p>
    </Screen>
  );
}
