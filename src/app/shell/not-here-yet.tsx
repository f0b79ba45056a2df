import { useEffect } from 'preact/hooks';
import { Action, LinkButton } from '#app/parts/action.tsx';
import { Screen } from '#app/parts/screen.tsx';

/** A screen that could not be fetched: why, and the way to it. */
export function NotHereYet({ onRetry }: { onRetry: () => unknown }) {
  useEffect(() => {
    addEventListener('online', onRetry);
    return () => removeEventListener('online', onRetry);
  }, [onRetry]);
  return (
    <Screen
      title="This screen is not on the phone yet"
      actions={
        <>
          <LinkButton to="/">To the bench</LinkButton>
          <Action onPress={onRetry}>Try again</Action>
        </>
      }
    >
      <p>
        The first time, every screen comes over the network, and it went before this one was here. Your record
        is on the phone and nothing of it is lost. Keep this page open: with a network back, this screen opens
        by itself.
      </p>
    </Screen>
  );
}
