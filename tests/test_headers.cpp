// Nothing of its own: it carries the headers that the tests share, compiled once.
