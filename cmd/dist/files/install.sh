#!/bin/sh
# ./install.sh            installs frontlay below ~/.local, as root below /usr/local
# ./install.sh FOLDER     installs it below another folder
# ./install.sh --remove [FOLDER]   takes it away again; your projects and settings stay
set -eu

remove=
if [ "${1-}" = --remove ]; then
	remove=yes
	shift
fi
to=$HOME/.local
[ "$(id -u)" != 0 ] || to=/usr/local
to=${1:-$to}
cd "$(dirname "$0")"
if [ -z "$remove" ]; then
	mkdir -p "$to"
fi
to=$(cd "$to" && pwd)

find bin share -type f | while read -r file; do
	if [ "$remove" ]; then
		rm -f "$to/$file"
	else
		mkdir -p "$to/$(dirname "$file")"
		cp "$file" "$to/$file"
	fi
done
if [ -z "$remove" ]; then
	sed "s|^Exec=frontlay|Exec=\"$to/bin/frontlay\"|" share/applications/frontlay.desktop >"$to/share/applications/frontlay.desktop"
fi

# Desktops find types of files and their programs in an index.
index() {
	[ ! -d "$2" ] || ! command -v "$1" >/dev/null || "$1" "$3"
}
index update-mime-database "$to/share/mime/packages" "$to/share/mime"
index update-desktop-database "$to/share/applications" "$to/share/applications"

if [ -z "$remove" ]; then
	echo "frontlay is installed: $to/bin/frontlay"
	"$to/bin/frontlay" --version >/dev/null 2>&1 || {
		echo "It lacks libraries. What it needs has on Debian these names:"
		echo "  apt install DEPENDS"
	}
	exit
fi
# What is left in folders where nothing else is: indexes, and the folders themselves.
rmdir "$to/share/mime/packages" 2>/dev/null && (
	cd "$to/share/mime"
	rm -f XMLnamespaces aliases generic-icons globs globs2 icons magic mime.cache subclasses treemagic types version
) || true
ls "$to/share/applications" 2>/dev/null | grep -qvx mimeinfo.cache || rm -f "$to/share/applications/mimeinfo.cache"
{
	find bin share -type d
	echo share/mime/application
} | sort -r | while read -r folder; do
	rmdir "$to/$folder" 2>/dev/null || true
done
rmdir "$to" 2>/dev/null || true
echo "frontlay is removed from $to"
