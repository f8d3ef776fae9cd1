// Plain CommonJS without new syntax, so that an old Node gets a sentence instead of a syntax error.
var parts = process.versions.node.split('.').map(Number);
var enough = (parts[0] === 20 && parts[1] >= 19) || (parts[0] === 22 && parts[1] >= 12) || parts[0] > 22;
if (!enough) {
  console.error(
    'Sternmount needs Node.js 20.19 or newer in that line, 22.12 or newer; this is ' +
      process.versions.node +
      '.',
  );
  process.exit(1);
}
