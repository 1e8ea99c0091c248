import { useMemo, useState } from "react";
import { useLocation } from "wouter";
import { Button } from "#web/shared/ui/Button.tsx";
import { TextField } from "#web/shared/ui/TextField.tsx";
import styles from "../proposals.module.css";
import { DraftStanding } from "./DraftStanding.tsx";
import { FormOfKind } from "./FormOfKind.tsx";
import { type FormDesk, FormDeskContext } from "./form-desk.ts";
import { formToSend } from "./form-to-send.ts";
import type { WritingKind } from "./kinds.ts";
import { readLocalCopy, type Written } from "./local-copy.ts";
import { ReadBack } from "./ReadBack.tsx";
import { type Place, useDraft } from "./use-draft.ts";
import { useLookOver } from "./use-look-over.ts";
import own from "./writing.module.css";

interface Props {
  kind: WritingKind;
  begun: Place | undefined;
  start: Written;
  onBegun: (id: string) => void;
}

/** A form, what it says, and what becomes of it. */
export function Writing({ kind, begun, start, onBegun }: Props) {
  const [, navigate] = useLocation();
  const local = useMemo(() => readLocalCopy(begun?.id ?? kind.kind), [begun?.id, kind.kind]);
  const isFilled = Object.keys(start.fields).length > 0;
  // What was kept here and never sent goes on where it was made on the version that stands.
  const isLocal =
    local !== undefined && local.version === (begun?.version ?? 0) && (begun !== undefined || !isFilled);
  const [written, setWritten] = useState<Written>(isLocal ? local : start);
  const [unsent, setUnsent] = useState<Written | undefined>(isLocal ? undefined : local);
  const [touched, setTouched] = useState<ReadonlySet<string>>(new Set());
  const [hasTried, setHasTried] = useState(begun !== undefined);
  const sent = useMemo(() => formToSend(kind.id, written.fields), [kind.id, written.fields]);
  const { looked, lookNow } = useLookOver(kind.kind, sent);
  const suggested = looked?.edits.at(kind.id === "merge" ? 0 : -1);
  const line = [...(suggested?.after ?? suggested?.before ?? "")].slice(0, 200).join("");
  const draft = useDraft(kind.kind, begun, start, written, looked?.change ?? [], line);
  const desk: FormDesk = {
    fields: written.fields,
    put: (fields) => {
      setWritten((before) => ({ ...before, fields: { ...before.fields, ...fields } }));
      setTouched((before) => new Set([...before, ...Object.keys(fields)]));
    },
    refusalAt: (field) =>
      hasTried || touched.has(field)
        ? looked?.problems.find(({ path }) => path[0] === field)?.message
        : undefined,
  };
  const hand = async (how: "open" | "keep") => {
    setHasTried(true);
    // The form as it is now, not as it was when the last answer came.
    const now = await lookNow();
    if (!now?.change) return;
    const place = await (how === "open" ? draft.open(now.change) : draft.keep(now.change));
    if (!place) return;
    onBegun(place.id);
    navigate(`/house/proposals/${place.id}`);
  };
  return (
    <FormDeskContext value={desk}>
      <div className={own["sheet"]}>
        <div className={own["fields"]}>
          {unsent === undefined ? null : (
            <p>
              Something was written here and never sent.{" "}
              <Button
                onPress={() => {
                  setWritten(unsent);
                  setUnsent(undefined);
                }}
              >
                Go on with that
              </Button>
            </p>
          )}
          <FormOfKind kind={kind} />
        </div>
        <ReadBack looked={looked} isTouched={hasTried || touched.size > 0} />
        <div className={own["fields"]}>
          <h2>For those who decide</h2>
          <TextField
            label="In a few words"
            value={written.title}
            onChange={(title) => setWritten((before) => ({ ...before, title }))}
            placeholder={line || "what it is"}
            hint="Left empty, it is what the sentence says."
            maxLength={200}
          />
          <TextField
            label="Why the evidence should change"
            value={written.why}
            onChange={(why) => setWritten((before) => ({ ...before, why }))}
            hint="What you saw or read, and where."
            lines={4}
            maxLength={5000}
            {...(hasTried && written.why.trim() === ""
              ? { refusal: "Say why, so that others can decide." }
              : {})}
          />
          <div className={styles["acts"]}>
            {begun?.isOpen ? null : (
              <Button
                look="main"
                onPress={() => void (written.why.trim() === "" ? setHasTried(true) : hand("open"))}
              >
                Hand it to the reviewers
              </Button>
            )}
            <Button onPress={() => void hand("keep")}>
              {begun?.isOpen ? "Keep it as it is now" : "See what it would change"}
            </Button>
          </div>
          <DraftStanding draft={draft} onBegun={onBegun} />
        </div>
      </div>
    </FormDeskContext>
  );
}
