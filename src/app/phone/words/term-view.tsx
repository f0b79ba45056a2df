import type { Term } from './term.ts';
import './words.css';

/** What a term means, with its picture. */
export function TermView({ term: { says, Picture } }: { term: Term }) {
  return (
    <>
      {Picture && <Picture />}
      <p>{says}</p>
    </>
  );
}
