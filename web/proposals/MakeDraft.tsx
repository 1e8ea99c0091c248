import { Button } from "../shared/ui/Button.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import type { Corrected } from "./corrections.ts";
import { Refusals } from "./Refusals.tsx";
import { useMakeDraft } from "./use-make-draft.ts";

/** The end of a correction: why, once it `isChosen` what is wrong, and the draft of what was `made` of it. */
export function MakeDraft({
  made,
  isChosen,
  hint,
}: {
  made: Corrected | undefined;
  isChosen: boolean;
  hint: string;
}) {
  const { make, step, why, setWhy } = useMakeDraft();
  return (
    <>
      {isChosen ? (
        <TextField label="Why" value={why} onChange={setWhy} lines={4} maxLength={5000} hint={hint} />
      ) : null}
      <Refusals of={[step]} />
      <Button
        look="main"
        isDisabled={made === undefined || step.isUnderWay}
        onPress={() => made && void make(made)}
      >
        Make a draft and see what it would do
      </Button>
    </>
  );
}
