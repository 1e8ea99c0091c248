import { Button } from "../shared/ui/Button.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import styles from "./AroundPage.module.css";
import { aroundEntryId } from "./around-entry-id.ts";
import type { Neighbour } from "./around-groups.ts";

interface Props {
  neighbour: Neighbour;
  onClose: () => void;
}

/** What was tapped in the drawing, at the foot of the window where the list is out of sight. */
export const AroundChosen = ({ neighbour: { id, number, term, from, words }, onClose }: Props) => (
  <aside className={styles["chosen"]} aria-label="Chosen in the drawing">
    <p>
      <span>
        {from.label}: {words}
      </span>
      {number} {term.label}
    </p>
    <p className={styles["choices"]}>
      <TextLink to={`/terms/${id}/around`}>Look around from it</TextLink>
      <TextLink to={`/terms/${id}`}>Its page</TextLink>
      <Button look="quiet" onPress={() => goToEntry(id)}>
        Who says so
      </Button>
      <Button look="quiet" onPress={onClose}>
        Close
      </Button>
    </p>
  </aside>
);

function goToEntry(id: string): void {
  const entry = document.getElementById(aroundEntryId(id));
  entry?.scrollIntoView({ block: "start" });
  entry?.querySelector("button")?.focus({ preventScroll: true });
}
