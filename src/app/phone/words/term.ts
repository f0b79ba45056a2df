import type { ComponentType } from 'preact';

/** A word of the trade as this app uses it. */
export interface Term {
  /** In addresses: '/words/seam' */
  id: string;
  name: string;
  /** What else it is called, so that it is found by that as well. */
  also?: string;
  /** Short sentences, as one builder would tell another. */
  says: string;
  Picture?: ComponentType;
}

export interface TermGroup {
  title: string;
  terms: readonly Term[];
}
