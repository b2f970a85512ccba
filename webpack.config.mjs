/**
 * Builds dist/: the pane, the functions and what Excel needs to find them.
 *
 * Without ADDIN_URL it is a development build for https://localhost:3000. With it, every address is that of the host,
 * sub-path included: ADDIN_URL=https://example.org/sewing npm run build. SUPPORT_URL, an https or mailto address, is
 * where the support page sends people.
 */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import CopyPlugin from "copy-webpack-plugin";
import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import HtmlWebpackPlugin from "html-webpack-plugin";
import webpack from "webpack";

/** The minimizer that webpack brings along and uses when none is named. */
const Minimizer = createRequire(import.meta.resolve("webpack"))("minimizer-webpack-plugin");

const root = dirname(fileURLToPath(import.meta.url));
const DEVELOPMENT_URL = "https://localhost:3000";
const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));

const address = addinUrl(process.env.ADDIN_URL);
const support = supportLink(process.env.SUPPORT_URL);

/** The address to build for, without a slash at its end. Excel loads add-ins by https only. */
export function addinUrl(wanted) {
  if (!wanted) return DEVELOPMENT_URL;
  const url = new URL(wanted);
  const local = /^(?:(?:.*\.)?localhost|127\.\d+\.\d+\.\d+|\[::1\]|0\.0\.0\.0)$/i.test(url.hostname);
  if (url.protocol !== "https:") throw new Error(`ADDIN_URL must start with https://, and is ${wanted}`);
  if (local) throw new Error("ADDIN_URL is for a public address; leave it out to build for this machine");
  if (url.search || url.hash) throw new Error("ADDIN_URL is the address of a folder, without ? or #");
  return url.href.replace(/\/$/, "");
}

/** The manifest as the host needs it: its addresses, and the version of package.json. */
export const manifestFor = (manifest, base) =>
  manifest
    .replaceAll(DEVELOPMENT_URL, () => escaped(base))
    .replace(/<Version>[^<]*<\/Version>/, `<Version>${version}.0</Version>`);

/** Where the support page sends people; without an address it says so in words. */
export function supportLink(wanted) {
  const place = "where the project keeps its issues";
  if (!wanted) return place;
  const { href, protocol } = new URL(wanted);
  if (protocol !== "https:" && protocol !== "mailto:")
    throw new Error(`SUPPORT_URL must start with https:// or mailto:, and is ${wanted}`);
  return `<a href="${escaped(href)}">${place}</a>`;
}

/** For an attribute: what else could end one, an address has as percent signs. */
function escaped(address) {
  return address.replaceAll("&", "&amp;").replaceAll('"', "%22");
}

/** A file whose name must stay, with a mark of its content: another content is another address to every cache. */
function marked(file) {
  const content = readFileSync(join(root, "taskpane", file));
  return `${file}?${createHash("sha256").update(content).digest("hex").slice(0, 8)}`;
}

/** The files that hold cell functions; the rest of the folder is what they share. */
const functionFiles = readdirSync(join(root, "functions"))
  .filter(
    (file) =>
      file.endsWith(".ts") && /^ \* @customfunction /m.test(readFileSync(join(root, "functions", file), "utf8")),
  )
  .sort()
  .map((file) => join(root, "functions", file));

/** One root module, so that everything behind the functions becomes one scope: an array of entries would stay in pieces. */
const functionsEntry = `data:text/javascript,${encodeURIComponent(functionFiles.map((file) => `import ${JSON.stringify(file)};`).join("\n"))}`;

/** What the generator can't express: an error in one cell of a range must not fail the whole call. */
class ErrorsInRanges {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("ErrorsInRanges", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE;
      compilation.hooks.processAssets.tap({ name: "ErrorsInRanges", stage }, (assets) => {
        const metadata = JSON.parse(assets["functions.json"].source().toString());
        for (const entry of metadata.functions) entry.allowErrorForDataTypeAny = true;
        compilation.updateAsset(
          "functions.json",
          new webpack.sources.RawSource(JSON.stringify(metadata, null, 2) + "\n"),
        );
      });
    });
  }
}

const NOTICES = `What others have written and this add-in ships inside its files, with their licences. The tools that build and
test it ship nothing; package.json names them. Excel loads office.js from its maker's own address.
`;

/** Names every package that went into the shipped files, with its licence text. */
class ThirdPartyNotices {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("ThirdPartyNotices", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tap({ name: "ThirdPartyNotices", stage }, () => {
        const folders = new Set();
        const visit = (module) => {
          const folder = /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/.exec(module.resource ?? "")?.[1];
          if (folder) folders.add(folder);
          for (const inner of module.modules ?? []) visit(inner);
        };
        for (const module of compilation.modules) visit(module);
        const text = `${NOTICES}\n${[...folders].sort().map(notice).join("\n")}`;
        compilation.emitAsset("third-party-notices.txt", new webpack.sources.RawSource(text));
      });
    });
  }
}

function notice(folder) {
  const { name, version: installed, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const file = readdirSync(folder).find((entry) => /^(?:licen[cs]e|copying)/i.test(entry));
  const text = file ? readFileSync(join(folder, file), "utf8").trim() : "(no licence file in the package)";
  return `${"=".repeat(78)}\n${name} ${installed}, ${license}\n${"=".repeat(78)}\n${text}\n`;
}

const inPage = (content) =>
  content
    .toString()
    .replaceAll("{{version}}", version)
    .replaceAll("{{support}}", () => support)
    .replaceAll('"pages.css"', `"${marked("pages.css")}"`);

const FUNCTIONS = /^functions\.js$/;

export default {
  mode: "production",
  target: ["web", "es2020"],
  context: root,
  devtool: false,
  entry: {
    functions: functionsEntry,
    excel: { import: "./taskpane/excel.ts", library: { name: "SewExcel", type: "window" } },
    taskpane: { import: "./taskpane/taskpane.ts", dependOn: "excel" },
  },
  output: {
    path: join(root, "dist"),
    // What is loaded on demand lies beside the page. Finding that out from the script's own address needs a page.
    publicPath: "",
    filename: "[name].js",
    chunkFilename: "[name].[contenthash:8].js",
    clean: true,
  },
  resolve: { extensions: [".ts", ".js", ".mjs"] },
  module: {
    rules: [
      // The engine only defines: what a bundle does not use can be left out of it.
      { test: /[\\/]src[\\/].*\.ts$/, sideEffects: false },
      {
        test: /\.ts$/,
        exclude: /node_modules/,
        loader: "ts-loader",
        options: { transpileOnly: true, compilerOptions: { noEmit: false, sourceMap: true, target: "ES2020" } },
      },
    ],
  },
  optimization: {
    minimizer: [
      // What the first pass inlines leaves names and branches that the next ones take out. The functions are ours alone,
      // so reading a property has no effect of its own in them; and as they are written, comparisons compress better.
      new Minimizer({
        include: FUNCTIONS,
        terserOptions: {
          ecma: 2020,
          compress: {
            ...{ ecma: 2020, passes: 3, inline: 1, lhs_constants: false },
            ...{ pure_getters: true, unsafe: true, unsafe_arrows: true },
          },
        },
      }),
      new Minimizer({ exclude: FUNCTIONS, terserOptions: { ecma: 2020, compress: { ecma: 2020, passes: 2 } } }),
    ],
  },
  performance: { hints: false },
  stats: "errors-warnings",
  plugins: [
    new CustomFunctionsMetadataPlugin({ output: "functions.json", input: functionFiles }),
    new ErrorsInRanges(),
    new ThirdPartyNotices(),
    new webpack.SourceMapDevToolPlugin({ filename: "[file].map", test: /\.m?js$/ }),
    new webpack.DefinePlugin({ ADDIN_VERSION: JSON.stringify(version) }),
    new HtmlWebpackPlugin({
      template: "taskpane/taskpane.html",
      filename: "taskpane.html",
      templateParameters: { styles: marked("taskpane.css") },
      chunks: ["excel", "taskpane", "functions"],
      chunksSortMode: "manual",
      hash: true,
    }),
    new CopyPlugin({
      patterns: [
        { from: "manifest.xml", to: "manifest.xml", transform: (text) => manifestFor(text.toString(), address) },
        { from: "taskpane/*.css", to: "[name][ext]" },
        { from: "taskpane/pages/*.html", to: "[name][ext]", transform: inPage },
        { from: "taskpane/assets/*.png", to: "assets/[name][ext]" },
      ],
    }),
  ],
};
