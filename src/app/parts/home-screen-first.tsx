import { iOSTab } from '#app/platform/install.ts';
import { docsOf } from '#app/state/documents.ts';
import { openBuilds } from '#app/state/journals.ts';
import { Warning } from './warning.tsx';

/** On an iPhone the tab and the app keep separate records: said while there is nothing in the tab to lose. */
export function HomeScreenFirst() {
  if (!iOSTab || openBuilds.value.length > 0 || docsOf('plan').length > 0) return null;
  return (
    <Warning kind="amber" title="Put it on the home screen first">
      This tab and the app on the home screen keep separate records, and a tab’s may be cleared after a week
      without use. Tap Share, then Add to Home Screen, and begin there.
    </Warning>
  );
}
