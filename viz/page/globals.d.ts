/// <reference types="vite/client" />

/** Version of this program, put in when the page is built. */
declare const __VERSION__: string;
