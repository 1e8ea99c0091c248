/** What came of reads. */
export interface Reads {
  readonly count: number;
  readonly failed: number;
  /** Longest time until an answer, in milliseconds. */
  readonly slowest: number;
  /** Answers without a code of ours, and lists that hold a thing twice. */
  readonly findings: readonly string[];
}

const QUERY = `{ examinations(first: 200) { totalCount edges { node { id version changedAt } } }
  revisions(first: 5) { edges { node { number at } } } }`;

interface Answer {
  readonly data?: {
    readonly examinations: { readonly edges: readonly { readonly node: { readonly id: string } }[] };
  } | null;
  readonly errors?: readonly { readonly extensions?: { readonly code?: string } }[];
}

/** Reads lists of a server, one after the other, until it is stopped. */
export function readAllTheTime(url: string): { readonly stop: () => Promise<Reads> } {
  let isStopped = false;
  let [count, failed, slowest] = [0, 0, 0];
  const findings: string[] = [];
  const read = async (): Promise<void> => {
    while (!isStopped) {
      const begun = performance.now();
      const response = await fetch(`${url}graphql`, {
        method: "POST",
        headers: { "Content-Type": "application/json" },
        body: JSON.stringify({ query: QUERY }),
      });
      const { data, errors } = (await response.json()) as Answer;
      slowest = Math.max(slowest, performance.now() - begun);
      count++;
      if (errors) {
        failed++;
        const code = errors[0]?.extensions?.code ?? "";
        if (!/^(STORE_|DEADLINE_)/.test(code))
          findings.push(`a read was answered with ${JSON.stringify(errors).slice(0, 300)}`);
      }
      const ids = data?.examinations.edges.map(({ node }) => node.id) ?? [];
      if (new Set(ids).size !== ids.length) findings.push("a list holds an examination twice");
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  };
  const reading = read();
  return {
    stop: async () => {
      isStopped = true;
      await reading;
      return { count, failed, slowest, findings };
    },
  };
}
