import type { DocType } from '#shared/record/revision.ts';

/** What stands on the shelf. Plans have a place of their own. */
export const shelfTypes = [
  'cloth',
  'resin',
  'release',
  'tape',
  'mandrel',
  'core',
  'checklist',
] as const satisfies DocType[];
export type ShelfType = (typeof shelfTypes)[number];
/** What is a list of fields; a checklist is a list of steps. */
export type ItemType = Exclude<ShelfType, 'checklist'>;

export interface KindWords {
  many: string;
  /** 'New cloth' */
  fresh: string;
  /** What it is for, where there is none yet. */
  about: string;
}

export const kindWords: Record<ShelfType, KindWords> = {
  cloth: {
    many: 'Cloths',
    fresh: 'New cloth',
    about: 'Its weight and its fiber say how much resin it takes.',
  },
  resin: {
    many: 'Resin systems',
    fresh: 'New resin system',
    about: 'A resin with one hardener: ratio, pot life, cure. The same resin with SLOW and with FAST is two.',
  },
  release: {
    many: 'Release systems',
    fresh: 'New release system',
    about: 'How the tube comes off the mandrel, and the heat it stands.',
  },
  tape: { many: 'Shrink tapes', fresh: 'New shrink tape', about: 'Where it pulls, and the heat it stands.' },
  mandrel: { many: 'Mandrels', fresh: 'New mandrel', about: 'What the tube is rolled on.' },
  core: { many: 'Cores', fresh: 'New core', about: 'Foam or other sheet between the skins of a wall.' },
  checklist: {
    many: 'Checklists',
    fresh: 'New checklist',
    about: 'The stages and steps of a build, copied into it when it starts.',
  },
};

export const isShelfType = (type: string | undefined): type is ShelfType =>
  shelfTypes.some((known) => known === type);
export const isItemType = (type: string | undefined): type is ItemType =>
  isShelfType(type) && type !== 'checklist';
