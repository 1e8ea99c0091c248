import { Button } from "#web/shared/ui/Button.tsx";
import { useDesk } from "./desk.ts";
import styles from "./StandingLine.module.css";

/** Whether what is shown is stored. Its place is kept, so that nothing moves when it changes. */
export function StandingLine() {
  const { standing, collisions, retry } = useDesk();
  if (collisions.length > 0)
    return (
      <span className={styles["refused"]} role="status">
        changed elsewhere
      </span>
    );
  switch (standing.kind) {
    case "saved":
      return (
        <span className={styles["standing"]} role="status">
          stored
        </span>
      );
    case "saving":
      return (
        <span className={styles["standing"]} role="status">
          storing …
        </span>
      );
    case "refused":
      return (
        <span className={styles["refused"]} role="status">
          not stored
        </span>
      );
    case "unreachable":
      return (
        <span className={styles["refused"]} role="status">
          not stored{" "}
          <Button look="quiet" onPress={retry}>
            Try again
          </Button>
        </span>
      );
  }
}
