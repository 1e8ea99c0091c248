import { connect, createServer, type Socket } from "node:net";

/** Where and how one connection breaks. */
export interface Break {
  /** When so many bytes have gone this way, over all connections together, from now on. */
  readonly after: number;
  readonly from: "client" | "server";
  /** Cut, or open and silent: nothing comes through any more, and nobody is told. */
  readonly how: "cut" | "silent";
}

/** A way to a server that can be cut. */
export interface CuttingProxy {
  /** Host and port. */
  readonly host: string;
  /**
   * Cuts the next connections that ask for a commit, so many times: before the server hears of it, or when it has kept the
   * write and its answer is on the way.
   */
  cutCommits(times: number, when: "before" | "after"): void;
  /** Breaks one connection, once. */
  breakOnce(where: Break): void;
  /** Holds back each piece of data for so many milliseconds, both ways; all of it, until 0, at `Infinity`. */
  delay(milliseconds: number): void;
  /** How many were cut or broken. */
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
  let [left, cut, wait]: [number, number, number] = [0, 0, 0];
  let when: "before" | "after" = "before";
  let due: Break | undefined;
  let resume = Promise.withResolvers<void>();

  const listener = createServer((client) => {
    const upstream = connect(Number(port), host);
    let isCommitting = false;
    let isSilent = false;
    const end = (): void => {
      client.destroy();
      upstream.destroy();
    };
    for (const socket of [client, upstream]) {
      sockets.add(socket);
      socket.on("error", end).on("close", () => {
        sockets.delete(socket);
        if (!isSilent) end();
      });
    }
    /** Lets data through, as far as it goes. */
    const pass = (data: Buffer, from: Break["from"], to: Socket): void => {
      if (isSilent) return;
      if (due?.from !== from) return void to.write(data);
      if (data.length <= due.after) {
        due = { ...due, after: due.after - data.length };
        return void to.write(data);
      }
      const { after, how } = due;
      due = undefined;
      cut++;
      to.write(data.subarray(0, after), how === "cut" ? end : undefined);
      isSilent = how === "silent";
    };
    const inOrder = (from: Break["from"], to: Socket) => {
      let last = Promise.resolve();
      let waiting = 0;
      return (data: Buffer): void => {
        const held = wait === Number.POSITIVE_INFINITY ? resume.promise : wait > 0 ? sleep(wait) : undefined;
        if (held === undefined && waiting === 0) pass(data, from, to);
        else {
          waiting++;
          last = last
            .then(() => held)
            .then(() => {
              waiting--;
              pass(data, from, to);
            });
        }
      };
    };
    const [up, down] = [inOrder("client", upstream), inOrder("server", client)];
    client.on("data", (data) => {
      if (left > 0 && data.includes(COMMIT)) {
        left--;
        cut++;
        if (when === "before") return end();
        isCommitting = true;
      }
      up(data);
    });
    upstream.on("data", (data) => {
      if (isCommitting) end();
      else down(data);
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
    breakOnce: (where) => {
      due = where;
    },
    delay: (milliseconds) => {
      wait = milliseconds;
      resume.resolve();
      resume = Promise.withResolvers();
    },
    cuts: () => cut,
    close: async () => {
      for (const socket of sockets) socket.destroy();
      await new Promise((resolve) => listener.close(resolve));
    },
  };
}

const sleep = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, milliseconds));
