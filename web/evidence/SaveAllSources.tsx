import { useApolloClient } from "@apollo/client/react";
import { useState } from "react";
import type { CslItem } from "#server/domain/source.ts";
import { readAllSources } from "#web/shared/sources/read-all-sources.ts";
import { Button } from "../shared/ui/Button.tsx";
import { sayFailure } from "../shared/ui/say-failure.ts";
import { TextLink } from "../shared/ui/TextLink.tsx";
import styles from "./SourceItem.module.css";
import { saveBibtex, saveCsl } from "./save-sources.ts";

/** All sources as one file, and the way to read in a list of others. */
export function SaveAllSources() {
  const client = useApolloClient();
  const [isReading, setIsReading] = useState(false);
  const [failure, setFailure] = useState("");
  const saveAll = (save: (name: string, items: readonly CslItem[]) => void) => async () => {
    setIsReading(true);
    setFailure("");
    await readAllSources(client)
      .then((items) => save("scribeline-sources", items))
      .catch((error: unknown) => {
        const { what, next } = sayFailure(error);
        setFailure(`${what} ${next}`);
      });
    setIsReading(false);
  };
  return (
    <div className={styles["all"]}>
      <p className={styles["actions"]}>
        <Button isDisabled={isReading} onPress={saveAll(saveCsl)}>
          Save all as CSL-JSON
        </Button>
        <Button isDisabled={isReading} onPress={saveAll(saveBibtex)}>
          Save all as BibTeX
        </Button>
        <TextLink to="/evidence/sources/import">Look through a list of your own</TextLink>
      </p>
      {failure === "" ? null : <p role="alert">{failure}</p>}
    </div>
  );
}
