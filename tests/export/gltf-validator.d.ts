/** What the tests use of the validator, which comes without types. */

declare module 'gltf-validator' {
  interface Message {
    readonly code: string;
    readonly message: string;
    /** 0 error, 1 warning, 2 information, 3 hint. */
    readonly severity: number;
  }

  export function validateBytes(
    bytes: Uint8Array,
    options?: { readonly maxIssues?: number },
  ): Promise<{ readonly issues: { readonly messages: readonly Message[] } }>;
}
