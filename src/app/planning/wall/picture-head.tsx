import type { ComponentChildren } from 'preact';

interface Props {
  children: ComponentChildren;
  to: string;
  /** What its words mean: an `Ask`. */
  ask?: ComponentChildren;
}

/** What a picture shows, and the way to the same picture filling the screen. */
export function PictureHead({ children, to, ask }: Props) {
  return (
    <div class="picture-head">
      <div class="ask-head">
        <h2>{children}</h2>
        {ask}
      </div>
      <a href={`#${to}`}>Larger</a>
    </div>
  );
}
