import { Beside, Secondary } from '#app/parts/action.tsx';
import type { QuantityInput } from '#app/parts/quantity-input.ts';
import type { UnitQuestion } from './unit-question.ts';

/** Asked under the field; the answer writes the unit beside the figure, so that it is plain from then on. */
export function UnitQuestionAsked({ question, input }: { question: UnitQuestion; input: QuantityInput }) {
  const { asks, other, same } = question;
  const write = (text: string) => {
    input.text.value = text;
  };
  return (
    <div class="unit-question">
      <p role="alert">{asks}</p>
      <Beside>
        {other && <Secondary onPress={() => write(other.text)}>Yes, {other.says}</Secondary>}
        {same && (
          <Secondary onPress={() => write(same.text)}>
            {other ? 'No' : 'Yes'}, {same.says}
          </Secondary>
        )}
      </Beside>
    </div>
  );
}
