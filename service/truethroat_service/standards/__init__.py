"""Rules of published standards: one package per edition, one file per clause group, none importing another."""
