import type { ComponentChildren } from 'preact';
import './facts.css';

/** What every hand in the trade knows of this step: said once, with where it comes from. */
export function Facts({
  title,
  source,
  children,
}: {
  title: string;
  source: string;
  children: ComponentChildren;
}) {
  return (
    <section>
      <h2>{title}</h2>
      <ul class="facts">{children}</ul>
      <p class="quiet">{source}</p>
    </section>
  );
}
