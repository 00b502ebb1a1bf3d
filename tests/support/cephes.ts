import cephes from "cephes";

// Its WebAssembly is compiled in the background: whoever calls too soon finds no functions.
await cephes.compiled;

export { cephes };
