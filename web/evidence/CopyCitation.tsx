import { useState } from "react";
import { Button } from "../shared/ui/Button.tsx";
import styles from "./SourceItem.module.css";

/** A citation as a line of text, and a button that copies it. */
export function CopyCitation({ text }: { text: string }) {
  const [outcome, setOutcome] = useState("");
  const copy = () =>
    // A page that was not opened over a safe connection has no clipboard.
    Promise.resolve()
      .then(() => navigator.clipboard.writeText(text))
      .then(
        () => setOutcome("Copied."),
        () => setOutcome("The browser does not let it be copied; select the line and copy it."),
      );
  return (
    <div className={styles["cite"]}>
      <p className={styles["line"]}>{text}</p>
      <p className={styles["actions"]}>
        <Button onPress={copy}>Copy the citation</Button> <span role="status">{outcome}</span>
      </p>
    </div>
  );
}
