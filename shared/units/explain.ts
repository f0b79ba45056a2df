import { formatNumber, formatQuantity, inUnits } from './format.ts';
import type { Failed } from './parse.ts';
import { definitionOf, type Quantity, type UnitSystem } from './quantity.ts';
import { unitLabels } from './unit-table.ts';

export interface ExplainOptions {
  quantity: Quantity;
  system: UnitSystem;
  /** What the field is called, put in front: 'Cut cloth: …'. */
  label?: string | undefined;
  /** The bounds that the text was read with, in SI. */
  min?: number | undefined;
  max?: number | undefined;
}

/** A bound in the builder's units, rounded to the inside, so that the figure named is itself accepted. */
function boundText(si: number, round: (n: number) => number, { quantity, system }: ExplainOptions): string {
  if (quantity === 'duration') return formatQuantity(si, { quantity, system });
  const { value, unit, decimals } = inUnits(si, { quantity, system });
  const digits =
    value === 0 ? 0 : Math.max(decimals, Math.min(6, 2 - Math.floor(Math.log10(Math.abs(value)))));
  const step = 10 ** digits;
  const figure = formatNumber(round(Number((value * step).toPrecision(12))) / step, digits, true);
  return `${figure}${unit === '' ? '' : `\u00a0${unit}`}`;
}

function acceptedUnits(labels: string[]): string | undefined {
  return labels.length > 1 ? `${labels.slice(0, -1).join(', ')} or ${labels.at(-1)}` : undefined;
}

function sentence({ reason, detail = '' }: Failed, options: ExplainOptions): string {
  const { quantity, system, min, max } = options;
  const { noun, dimension, metric, inchPound } = definitionOf(quantity);
  const [own, other] = system === 'metric' ? [metric, inchPound] : [inchPound, metric];
  const examples = own.example === other.example ? own.example : `${own.example} or ${other.example}`;
  const like = `${noun} like ${examples}`;
  const nounAlone = noun.replace(/^an? /, '');
  switch (reason) {
    case 'empty':
      return `Write ${like}.`;
    case 'notANumber':
      return `${detail} is not a number: write ${like}.`;
    case 'unknownUnit':
    case 'wrongKind':
      return `${detail} is not ${noun}: ${acceptedUnits(unitLabels(dimension)) ?? `write it like ${examples}`}.`;
    case 'ambiguousComma': {
      const asDecimal = formatNumber(Number(detail.replace(',', '.')), 3, true);
      const asGroups = detail.replace(',', '');
      return `${detail} could be ${asDecimal} or ${asGroups}: write ${asDecimal} or ${asGroups}.`;
    }
    case 'ambiguousPercent':
      return `${detail} could be 1 % or 100 %: write it with its % sign.`;
    case 'notWhole':
      return `${detail} is not a whole number: write one like ${own.example}.`;
    case 'twoNumbers':
      return `${detail} has two numbers: write one, like ${own.example}.`;
    case 'negative':
      return `This ${nounAlone} cannot be below zero: write it without the minus.`;
    case 'zero':
      return `Zero will not do here: write ${like}.`;
    case 'tooBig':
      return max === undefined
        ? 'That is more than anything on a bench: check the figure.'
        : `That is more than ${boundText(max, Math.floor, options)}: check the figure.`;
    case 'tooSmall':
      return min === undefined
        ? 'That is less than anything on a bench: check the figure.'
        : `That is less than ${boundText(min, Math.ceil, options)}: check the figure.`;
  }
}

/** One sentence at the field: what is wrong with what was typed, and what would be right. */
export function explainFailure(failure: Failed, options: ExplainOptions): string {
  const text = sentence(failure, options);
  if (!options.label) return text;
  const isQuoting = failure.detail !== undefined && text.startsWith(failure.detail);
  return `${options.label}: ${isQuoting ? text : text.charAt(0).toLowerCase() + text.slice(1)}`;
}

/** What a ratio field says: its parts are plain numbers. */
export function explainRatioFailure({ reason }: Failed): string {
  return reason === 'negative' || reason === 'zero'
    ? 'Both parts of a ratio are above zero: write it like 55:45.'
    : 'Write a ratio like 55:45: the parts by weight, with a colon between.';
}
