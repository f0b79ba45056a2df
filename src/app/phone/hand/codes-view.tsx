import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Beside, Secondary } from '#app/parts/action.tsx';
import { CodePicture } from './code-picture.tsx';

/** Two codes a second: a camera catches each, and nothing flickers. */
const each = 500;

/** The codes one after the other, round and round, until the other phone has them all. */
export function CodesView({ codes }: { codes: readonly string[] }) {
  const at = useSignal(0);
  const still = useSignal(false);
  const step = (by: number) => {
    at.value = (at.value + by + codes.length) % codes.length;
  };
  useEffect(() => {
    if (still.value || codes.length < 2) return;
    const timer = setInterval(() => step(1), each);
    return () => clearInterval(timer);
  }, [still.value, codes]);
  const code = codes[at.value] ?? '';
  const says = codes.length === 1 ? 'The only code' : `Code ${at.value + 1} of ${codes.length}`;
  return (
    <>
      <CodePicture code={code} label={says} />
      <p class="codes-count">{says}</p>
      {codes.length > 1 && (
        <Beside>
          <Secondary onPress={() => step(-1)}>The one before</Secondary>
          <Secondary
            onPress={() => {
              still.value = !still.value;
            }}
          >
            {still.value ? 'Go on' : 'Hold still'}
          </Secondary>
        </Beside>
      )}
    </>
  );
}
