// Holds nothing: its target makes the precompiled headers that the tests share.
