import { useMutation } from "@apollo/client/react";
import { useState } from "react";
import { useLocation } from "wouter";
import { Button } from "../shared/ui/Button.tsx";
import { sayFailure } from "../shared/ui/say-failure.ts";
import { BeginFromSheetDocument } from "./BeginFromSheet.graphql.ts";
import { pieceFromSheet } from "./piece-from-sheet.ts";
import styles from "./Sheet.module.css";

interface Props {
  sheet: Parameters<typeof pieceFromSheet>[0];
  says?: string;
  /** What is opened of the new examination: its page, unless said. */
  opens?: (id: string) => string;
}

/** Makes an examination of the sheet's form, with its usual parts, and opens it. */
export function BeginFromSheet({
  sheet,
  says = "Begin an examination with this sheet",
  opens = (id) => `/pieces/${id}`,
}: Props) {
  const [beginPiece, { loading }] = useMutation(BeginFromSheetDocument);
  const [refusal, setRefusal] = useState<string>();
  const [, navigate] = useLocation();
  const begin = async () => {
    setRefusal(undefined);
    try {
      const piece = pieceFromSheet(sheet, new Date().getFullYear());
      const result = (await beginPiece({ variables: { piece } })).data?.createExamination;
      if (result?.__typename === "ExaminationChanged") navigate(opens(result.examination.id));
      else setRefusal(result?.problems.map(({ message }) => message).join(" "));
    } catch (failure) {
      const { what, next } = sayFailure(failure);
      setRefusal(`${what} ${next}`);
    }
  };
  return (
    <>
      <Button isDisabled={loading} onPress={() => void begin()}>
        {says}
      </Button>
      {refusal ? (
        <p role="alert" className={styles["refusal"]}>
          {refusal}
        </p>
      ) : null}
    </>
  );
}
