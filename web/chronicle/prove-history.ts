import { type Answered, refusalIn, sendToServer } from "../shared/asking/ask-server.ts";

/** How far a proof is, or what came of it. */
export type Proof =
  | { readonly progress: string }
  | {
      readonly proven: {
        readonly revisions: number;
        readonly head: string;
        readonly checkpoints: number;
      };
    }
  | { readonly broken: { readonly message: string; readonly path: readonly (string | number)[] } }
  | Extract<Answered<unknown>, { refused: unknown }>;

const BROKEN_OFF = {
  code: "BROKEN_OFF",
  message: "The connection was lost before the check was through. Nothing was changed. Try again.",
};

/** Asks for the proof and tells each line of it as it comes. */
export async function proveHistory(tell: (proof: Proof) => void): Promise<void> {
  tell({ progress: "Asking" });
  try {
    const response = await sendToServer("/chronicle/prove", {});
    if (!response.ok || response.body === null)
      return tell(refusalIn(response.status, await response.json()));
    const reader = response.body.pipeThrough(new TextDecoderStream()).getReader();
    let [begun, isThrough] = ["", false];
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      const lines = (begun + value).split("\n");
      begun = lines.pop() ?? "";
      for (const line of lines) {
        const proof = JSON.parse(line) as Proof;
        isThrough = !("progress" in proof);
        tell(proof);
      }
    }
    if (!isThrough) tell({ refused: [BROKEN_OFF] });
  } catch {
    tell({ refused: [BROKEN_OFF] });
  }
}
