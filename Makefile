# Everything runs in .venv, which the first target that needs it makes. Python 3.11 or newer and make are enough.

SHELL := /bin/sh
.DEFAULT_GOAL := help
.DELETE_ON_ERROR:
# Two targets must never install into one environment at the same time.
.NOTPARALLEL:

VENV := .venv
BIN := $(VENV)/bin
PIP := $(BIN)/python -m pip --disable-pip-version-check
APP := truethroat_service.api:create_app()
# A process for each core, but each one collects all tests first: beyond a few that is not worth it.
PYTEST := $(BIN)/pytest -n auto --maxprocesses 4
OPENAPI := $(BIN)/python -m truethroat_service.api.openapi_document
DOCUMENT := openapi/openapi.json
CLIENT := $(BIN)/python openapi/generate_client.py
UV ?= uv
# Extras stay in the lock, so that each line of it says all that was asked for: coverage[toml] is not coverage.
COMPILE = $(UV) pip compile pyproject.toml --universal --python-version 3.11 --generate-hashes --no-strip-extras \
	--no-emit-index-url --no-emit-find-links --no-header -q
PORT ?= 8000
BIND ?= 127.0.0.1:$(PORT)

# A name on the PATH proves little: a version manager's stand-in may refuse to run, and a system Python may lack venv. So try each.
USABLE := import sys, venv, ensurepip; sys.exit(sys.version_info < (3, 11))
PYTHON ?= $(shell for python in python3.13 python3.12 python3.11 python3; do \
	if "$$python" -c '$(USABLE)' >/dev/null 2>&1; then echo "$$python"; break; fi; done)

# An environment that is there and fine is kept. One that has lost its Python, has no pip, is too old or was copied from
# another folder (where its scripts and the project's own path would still point) is made anew.
FINE := import os, sys, pip; assert sys.version_info >= (3, 11) and sys.prefix in open(os.path.join(sys.prefix, "bin", "activate")).read()
ifneq ($(shell $(BIN)/python -c '$(FINE)' 2>/dev/null && echo fine),fine)
.PHONY: $(BIN)/python
endif

.PHONY: help demo test fuzz serve bench openapi check lock clean

help: ## List the targets
	@awk 'BEGIN { FS = ":.*## " } /^[a-z]+:.*## / { printf "make %-8s %s\n", $$1, $$2 }' $(MAKEFILE_LIST)

demo: $(VENV)/.service ## Run the demonstration: a hopper and its frame
	$(BIN)/python tests/demonstration/hopper.py

test: check ## Check, compare the OpenAPI document with the code and the client with it, run every test with coverage
	$(OPENAPI) --check $(DOCUMENT)
	$(CLIENT) --check
	$(PYTEST) --cov --cov-branch

fuzz: $(VENV)/.test ## Draw other examples than make test, and twenty times as many (about an hour)
	$(PYTEST) -m hypothesis --hypothesis-profile=fuzz

check: $(VENV)/.test ## Lint, formatting, types and the direction of imports
	$(BIN)/ruff check
	$(BIN)/ruff format --check
	$(BIN)/mypy
	$(BIN)/lint-imports

serve: $(VENV)/.service ## Serve on 127.0.0.1:8000 (PORT=... or BIND=... to change)
	BIND='$(BIND)' $(BIN)/gunicorn -c docker/gunicorn.conf.py '$(APP)'

bench: $(VENV)/.test ## Run the benchmarks
	$(BIN)/python tests/benchmarks/run.py

openapi: $(VENV)/.test ## Write the OpenAPI document from the code, and the client from the document
	$(OPENAPI) $(DOCUMENT)
	$(CLIENT)

lock: ## Resolve both requirements files again (needs uv)
	@command -v $(UV) >/dev/null || { echo 'make lock needs uv (set UV=... if it is not on the PATH)' >&2; exit 1; }
	$(COMPILE) --extra service -o requirements.txt
	$(COMPILE) --extra service --extra test -o requirements-test.txt

clean: ## Remove .venv, caches and everything built
	rm -rf $(VENV) build dist .coverage .coverage.* .hypothesis .import_linter_cache .mypy_cache .pytest_cache \
		.ruff_cache .schemathesis service/*.egg-info sdk/*.egg-info *.egg-info
	find . -name .git -prune -o -type d -name __pycache__ -prune -exec rm -rf {} +

$(BIN)/python:
	@python='$(PYTHON)'; \
	if ! "$$python" -c '$(USABLE)' >/dev/null 2>&1; then \
		echo "$${python:-Nothing on the PATH} is not a Python 3.11 or newer with venv." >&2; \
		echo 'Install one (on Debian python3-venv too) or name one: make PYTHON=...' >&2; \
		exit 1; \
	fi; \
	echo "Making $(VENV) with $$python"; \
	"$$python" -m venv --clear $(VENV)

# Nothing published later may change an install: only what the lock names, in the wheels whose hashes it holds, is taken.
# Wheels alone, because building from source fetches tools that no lock holds; setuptools is locked, and builds the project.
define INSTALL
@echo 'Installing $< and the project into $(VENV)'
@$(PIP) install --quiet --no-deps --only-binary :all: --require-hashes -r $<
@$(PIP) install --quiet --no-deps --no-build-isolation -e .
@$(PIP) check || { echo 'Packages in $(VENV) do not fit together: make clean, then try again.' >&2; exit 1; }
@touch $@
endef

$(VENV)/.service: requirements.txt pyproject.toml $(BIN)/python
	$(INSTALL)

# The test requirements hold the service's as well, so one install serves both stamps.
$(VENV)/.test: requirements-test.txt pyproject.toml $(BIN)/python
	$(INSTALL)
	@touch $(VENV)/.service
