// Eleventy 3.1 ships no types: the few calls this project makes.
declare module "@11ty/eleventy" {
  export interface UserConfig {
    setDataDirectory(folder: string): void;
    setTemplateFormats(formats: readonly string[]): void;
    setUseGitIgnore(use: boolean): void;
    addExtension(
      extension: string,
      options: {
        read: boolean;
        getData: boolean;
        compile(content: unknown, inputPath: string): (data: { readonly sitePath: string }) => string;
      },
    ): void;
    addTemplate(virtualPath: string, content: string, data: object): void;
    setServerOptions(options: { readonly messageOnStart: () => string }): void;
    /** Folders in which a change makes Eleventy ask for its settings, so for the pages, anew. */
    readonly watchTargetsConfigReset: Set<string>;
  }
  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {
        configPath: string;
        quietMode: boolean;
        runMode?: "build" | "serve";
        loader: "esm";
        config(user: UserConfig): void | Promise<void>;
      },
    );
    readonly eleventyServe: { readonly server: { ready(): Promise<void>; getServerUrl(host: string): string } };
    init(): Promise<void>;
    disableLogger(): void;
    write(): Promise<unknown>;
    /** Builds, then watches; answers with the call that builds again because of one changed path. */
    watch(): Promise<(path: string) => Promise<void>>;
    serve(port: number): Promise<void>;
    stopWatch(): Promise<void>;
  }
}
