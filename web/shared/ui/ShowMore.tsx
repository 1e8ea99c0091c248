import { useTransition } from "react";
import { Button } from "./Button.tsx";
import styles from "./ShowMore.module.css";

interface Props {
  /** The pages read so far. */
  list: {
    readonly edges: readonly unknown[];
    readonly totalCount: number;
    readonly pageInfo: { readonly hasNextPage: boolean; readonly endCursor: string | null };
  };
  /** Reads the page after a cursor; what was read stays on the screen meanwhile. */
  onMore: (after: string | null) => Promise<unknown>;
  label?: string;
}

/** Reads on in a long list, and says how much of it is shown; nothing where all of it is. */
export function ShowMore({ list: { edges, totalCount, pageInfo }, onMore, label = "Show more" }: Props) {
  const [isLoading, startLoading] = useTransition();
  if (!pageInfo.hasNextPage) return null;
  return (
    <p className={styles["more"]}>
      <Button
        isDisabled={isLoading}
        onPress={() => startLoading(async () => void (await onMore(pageInfo.endCursor)))}
      >
        {label}
      </Button>{" "}
      {edges.length} of {totalCount} shown
    </p>
  );
}
