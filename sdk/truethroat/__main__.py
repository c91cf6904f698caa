"""Run the command line as `python -m truethroat`."""

from truethroat.command_line import main

if __name__ == "__main__":
    raise SystemExit(main())
