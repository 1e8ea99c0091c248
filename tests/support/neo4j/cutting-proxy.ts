import { connect, createServer, type Socket } from "node:net";

/** A way to a server that can be cut. */
export interface CuttingProxy {
  /** Host and port. */
  readonly host: string;
  /**
   * Cuts the next connections that ask for a commit, so many times: before the server hears of it, or when it has kept the
   * write and its answer is on the way.
   */
  cutCommits(times: number, when: "before" | "after"): void;
  /** How many were cut. */
  cuts(): number;
  /** Nothing comes through any more. */
  close(): Promise<void>;
}

/** The message COMMIT of Bolt 4 and 5, as a chunk of two bytes: a structure without fields, of the tag 0x12. */
const COMMIT = Buffer.from([0x00, 0x02, 0xb0, 0x12]);

/** Opens a proxy to a server that is spoken to without TLS. */
export async function cuttingProxy(server: string): Promise<CuttingProxy> {
  const [host = "", port] = server.split(":");
  const sockets = new Set<Socket>();
  let [left, cut]: [number, number] = [0, 0];
  let when: "before" | "after" = "before";

  const listener = createServer((client) => {
    const upstream = connect(Number(port), host);
    let isCommitting = false;
    const end = (): void => {
      client.destroy();
      upstream.destroy();
    };
    for (const socket of [client, upstream]) {
      sockets.add(socket);
      socket.on("error", end).on("close", () => {
        sockets.delete(socket);
        end();
      });
    }
    client.on("data", (data) => {
      if (left > 0 && data.includes(COMMIT)) {
        left--;
        cut++;
        if (when === "before") return end();
        isCommitting = true;
      }
      upstream.write(data);
    });
    upstream.on("data", (data) => {
      if (isCommitting) end();
      else client.write(data);
    });
  });
  await new Promise<void>((resolve) => listener.listen(0, "127.0.0.1", resolve));
  const address = listener.address();
  return {
    host: `127.0.0.1:${typeof address === "object" && address !== null ? address.port : 0}`,
    cutCommits: (times, moment) => {
      left = times;
      when = moment;
    },
    cuts: () => cut,
    close: async () => {
      for (const socket of sockets) socket.destroy();
      await new Promise((resolve) => listener.close(resolve));
    },
  };
}
