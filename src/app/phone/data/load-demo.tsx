import { useSignal } from '@preact/signals';
import { Secondary } from '#app/parts/action.tsx';
import { Warning } from '#app/parts/warning.tsx';

/** Opens the demo shop; what stops it stands above the button. */
export function LoadDemo() {
  const loading = useSignal(false);
  const failure = useSignal<string | undefined>(undefined);
  const open = async () => {
    if (loading.value) return;
    loading.value = true;
    const { demoFailureWords, openDemo } = await import('./demo.ts');
    const why = await openDemo();
    if (why === undefined) return;
    failure.value = demoFailureWords[why];
    loading.value = false;
  };
  return (
    <>
      {failure.value && (
        <Warning kind="amber" title="The demo shop did not open" announce>
          {failure.value}
        </Warning>
      )}
      <Secondary onPress={open}>
        {loading.value ? 'Putting the demo on the bench' : 'Load the demo shop'}
      </Secondary>
    </>
  );
}
