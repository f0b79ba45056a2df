import { path } from '#app/router.ts';
import { late } from './late.ts';

const tabs = [
  {
    to: '/',
    label: 'Bench',
    under: [
      '/build',
      '/mix',
      '/oven',
      '/weigh',
      '/measure',
      '/start',
      '/clocks',
      '/timer',
      '/cut',
      '/edge',
      '/tape',
      '/demold',
      '/try',
    ],
  },
  { to: '/plans', label: 'Plans', under: ['/plans', '/plan', '/ledger', '/hand/plan'] },
  { to: '/record', label: 'Record', under: ['/record', '/hand/build', '/compare', '/factors'] },
  { to: '/shelf', label: 'Shelf', under: ['/shelf', '/lots', '/data', '/settings', '/words'] },
] as const;

/** The four places of the app. */
export function Tabs() {
  const here = path.value;
  const isUnder = (root: string) => here === root || here.startsWith(`${root}/`);
  return (
    <nav class="tabs" aria-label="Main">
      <ul>
        {tabs.map((tab) => {
          const current = here === tab.to || tab.under.some(isUnder);
          return (
            <li key={tab.to}>
              <a href={`#${tab.to}`} aria-current={current ? 'page' : undefined}>
                {tab.label}
              </a>
            </li>
          );
        })}
        {(here === '/' || tabs[0].under.some(isUnder)) && late.value && (
          <li>
            <late.value.WipeKey kind="tab" />
          </li>
        )}
      </ul>
    </nav>
  );
}
